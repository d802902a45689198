import type { Hertz } from "#core/units/units.ts";
import type { Behaviour } from "./behaviour.ts";
import { circuitInto } from "./circuit-step.ts";
import { inside } from "./inside-step.ts";
import { person } from "./person-step.ts";
import { isFed, reachInto } from "./reach.ts";
import { type BuiltRig, instrumentAt, listenerOf, operatorId, wornAt } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";
import { sentAs, wanted } from "./wanted-step.ts";

/** One step on the way from the programme to an ear: a circuit, a box's inside, or a person. */
export interface Step {
  readonly id: string;
  /** The faults that change this step, and no other. */
  readonly owns: (fault: RigFault) => boolean;
  /** Two steps of one shape, with faults called the same, do the same under the same of them. */
  readonly shape: string;
  readonly called: (fault: RigFault) => string;
  /** Which of the things that hang on one circuit a position hears: a set of headphones on a splitter, say. Zero where there is one. */
  readonly branch: (position: string) => number;
  /** What it does under those of its faults that are there, towards one of its branches, at a frequency. */
  readonly behaviour: (faults: readonly RigFault[], branch: number, at: Hertz) => Behaviour;
}

/** The way to a position, from the operator to the listener, or to the instrument that stands there. */
export function stepsTo(rig: BuiltRig, position: string): readonly Step[] {
  const wears = wornAt(rig, position);
  const turned = rig.positions.find(({ id }) => id === position)?.turned === true;
  const steps: Step[] =
    instrumentAt(rig, position) === undefined ? [person(rig, listenerOf(position), turned)] : [];
  if (rig.part(wears).through !== undefined && isFed(rig, wears)) steps.push(inside(rig, wears));
  for (let part = wears; isFed(rig, part); ) {
    steps.push(circuitInto(rig, part));
    part = reachInto(rig, part).from;
    steps.push(inside(rig, part));
  }
  const wants = rig.positions.find(({ id }) => id === position)?.wants;
  if (wants !== undefined) steps.push(sentAs(wants));
  return [...steps, wanted(rig), person(rig, operatorId)].reverse();
}
