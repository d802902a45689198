import type { Source } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { catalogue } from "#core/parts/catalogue.ts";
import type { Socket } from "#core/parts/part.ts";
import { solved } from "#core/rig/circuit-step.ts";
import { inside } from "#core/rig/inside-step.ts";
import { midband } from "#core/rig/midband.ts";
import { isFed, reachInto } from "#core/rig/reach.ts";
import { type BuiltRig, socketOf, wornAt } from "#core/rig/rig.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { sentAs } from "#core/rig/wanted-step.ts";
import { size, subtract } from "#core/units/complex.ts";
import { chain, type Matrix } from "#core/units/matrix.ts";
import type { Decibels, Ohms } from "#core/units/units.ts";
import { type FigureName, stageOf, wornOf } from "./figures.ts";
import {
  doubtOf,
  type SensitivityDoubt,
  type SensitivityUnit,
  sensitivityUnits,
} from "./sensitivity.ts";
import { knobSetting, type Told, toldIn } from "./told.ts";

/** A box on the way to a position: what it does, in volts. */
export interface Stage {
  readonly part: string;
  /** The output that the way leaves it by; the first of a pair. */
  readonly socket: string;
  /** How far its knob is up, from nought to one; nothing where there is none. */
  readonly knob: number | undefined;
  /** Whether its numbers are the same for all of its outputs. */
  readonly shared: boolean;
  readonly figures: Readonly<Record<Exclude<FigureName, "sensitivity">, Told>>;
  /** From what it takes in (of a source: the two sides of the programme) to its signals, as its switches stand. */
  readonly inside: Matrix;
  /** From its signals, volts on one leg, to what the next takes in. */
  readonly passes: Matrix;
  /** What each of these shows to a meter with nothing driven: its thermal noise is that of so many ohms. */
  readonly ohms: readonly Ohms[];
}

/** The way to a pair of ears in volts. */
export interface Feed {
  readonly position: string;
  readonly stages: readonly Stage[];
  readonly worn: {
    readonly part: string;
    /** Of each driver. */
    readonly ohms: Ohms;
    /** As its data sheet has it. */
    readonly sensitivity: Told;
    readonly unit: SensitivityUnit;
    readonly doubt: SensitivityDoubt | undefined;
    /** From the drivers to the ears. */
    readonly inside: Matrix;
  };
}

/** A knob that nobody said anything of stands here. Common practice, no source. */
export const usualKnob = 0.5;

/** The way to a position as the rig is drawn, with nothing wrong. Nothing where an instrument stands, or nothing feeds it. */
export function feedTo(rig: BuiltRig, position: string): Feed | undefined {
  const worn = wornAt(rig, position);
  const usual = wornOf(rig.part(worn).kind);
  if (usual === undefined || !isFed(rig, worn)) return undefined;
  const stages: Stage[] = [];
  for (let part = worn; isFed(rig, part); part = reachInto(rig, part).from)
    stages.push(stageInto(rig, part, position));
  const settings = rig.parts.find(({ id }) => id === worn)?.settings;
  const ohms = Number(settings?.ohms ?? usualOhms(rig, worn));
  const said = sensitivityUnits.find((one) => one === settings?.["sensitivity in"]) ?? usual.unit;
  const sensitivity = toldIn(settings, "sensitivity", usual);
  return {
    position,
    stages: stages.reverse(),
    worn: {
      part: worn,
      ohms,
      sensitivity,
      unit: sensitivity.told ? said : usual.unit,
      doubt: sensitivity.told ? doubtOf(sensitivity.typical, said, ohms) : undefined,
      inside: rig.part(worn).through === undefined ? [] : insideOf(rig, worn),
    },
  };
}

/** Of one driver as its kind has it; what has none of its own is taken as ordinary headphones. */
function usualOhms(rig: BuiltRig, worn: string): Ohms {
  const { ohms } = catalogue[rig.part(worn).kind].parameters;
  return ohms !== undefined && "unit" in ohms ? ohms.typical : 32;
}

const insideOf = (rig: BuiltRig, part: string): Matrix =>
  inside(rig, part).behaviour([], 0, midband).gains;

function stageInto(rig: BuiltRig, next: string, position: string): Stage {
  const { from, ends } = reachInto(rig, next);
  const box = rig.part(from);
  const settings = rig.parts.find(({ id }) => id === from)?.settings;
  const name = ends.find(({ into }) => into === from)?.socket ?? "";
  const socket = socketOf(box, name);
  const usual = stageOf(box.kind, {
    link: socket.kind === "link",
    phones: socket.ties?.includes("headphone knob") === true || isForHeadphones(socket),
  });
  const shared = box.family === "amplifier";
  const told = (figure: keyof typeof usual) =>
    toldIn(settings, figure, usual[figure], shared ? undefined : name);
  const knob = settings?.[knobSetting(name)];
  return {
    part: from,
    socket: name,
    knob: hasKnob(socket) ? upTo(typeof knob === "number" ? knob : usualKnob) : undefined,
    shared,
    figures: {
      "most volts": told("most volts"),
      // What nothing feeds has no gain in front: full scale is the most it gives.
      gain: isFed(rig, from) ? told("gain") : { typical: 0, low: 0, high: 0, told: true },
      "input noise": told("input noise"),
      "output noise": told("output noise"),
      "most input volts": told("most input volts"),
    },
    inside: isFed(rig, from) ? insideOf(rig, from) : sent(rig, from, position),
    passes: solved(rig, next, []),
    ohms: ohmsAt(rig, next),
  };
}

const upTo = (knob: number): number => Math.min(1, Math.max(0, knob));

/** What a source sends of a programme, as somebody wants it. */
function sent(rig: BuiltRig, source: string, position: string): Matrix {
  const wants = rig.positions.find(({ id }) => id === position)?.wants;
  const own = insideOf(rig, source);
  return wants === undefined ? own : chain(own, sentAs(wants).behaviour([], 0, midband).gains);
}

const isForHeadphones = ({ kind, name }: Socket): boolean =>
  name === "phones" || kind.startsWith("four-pole");

const knobs: readonly string[] = ["main fader", "monitor knob", "headphone knob", "send knob"];

/** Whether something turns this output up and down. What is worn on a belt, and what a computer sends, has one too. */
const hasKnob = ({ ties = [], circuit, name }: Socket): boolean =>
  name === "phones" ||
  ties.some((tie) => knobs.includes(tie)) ||
  circuit.some((element) => element.kind === "source" && element.level !== undefined);

const meter = "meter";

/** What each of the things that a part takes in shows to a meter, at 1 kHz, with nothing driven. */
function ohmsAt(rig: BuiltRig, part: string): readonly Ohms[] {
  const { circuit } = stretchInto(rig, part, []);
  return rig.part(part).takes.map(({ plus, minus }) => {
    const [a, b] = [`${part}: ${plus}`, `${part}: ${minus}`];
    const probe: Source = { kind: "source", name: meter, a, b, ohms: 1000, drive: { [meter]: 1 } };
    const [volts] = solve([...circuit, probe], midband, [meter]);
    if (volts === undefined) throw new Error("a circuit without an answer");
    const across = subtract(volts(a), volts(b));
    // Of the voltage behind a thousand ohms, what is left over the ohms: only their real part makes noise.
    const left = subtract({ re: 1, im: 0 }, across);
    const square = size(left) ** 2;
    return Math.max(0, (1000 * (across.re * left.re + across.im * left.im)) / square);
  });
}

/** Full scale as a programme has it, against its mean: what it is turned up by until it clips. */
export interface Programme {
  /** Mean level of each side against full scale, decibels, below nothing. */
  readonly level: Decibels;
}

/** As a desk is lined up: 18 dB below full scale (EBU R 68). */
export const usualProgramme: Programme = { level: -18 };
