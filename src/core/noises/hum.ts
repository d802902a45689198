import type { Trial } from "#core/checks/noise.ts";
import { humRisk, pickedUp } from "#core/patching/hum.ts";
import { circuitInto } from "#core/rig/circuit-step.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { byPlace } from "./by-place.ts";
import type { Cause } from "./cause.ts";
import { beforeKnob, behindKnob, inProgramme, type Way } from "./way.ts";
import {
  gone,
  inOrder,
  less,
  mixed,
  moves,
  type Shares,
  same,
  still,
  type World,
} from "./world.ts";

interface Humming {
  readonly cause: Cause;
  readonly place: number;
  readonly weight: number;
  readonly own?: (trial: Trial) => Shares | undefined;
}

/** Odds in 10,000: common practice, no source. A loop's are by what the circuit makes of two earths a few millivolts apart. */
const odds = {
  programme: 60,
  supply: { "mains-earthed": 8, floating: 20, battery: 0 },
  loop: { none: 6, some: 60, loud: 250 },
  /** By another lead than the ones that are drawn: USB, a network, a screen. */
  hiddenLoop: { balanced: 3, unbalanced: 25 },
  pickup: { balanced: 2, unbalanced: 14 },
} as const;

/** Every cause of a hum on the way: loops by two earths, a lead that picks it up, a return that is lost, a supply, the programme. */
export function humWorlds(way: Way): readonly World[] {
  const all: readonly Humming[] = [
    { cause: { cause: "in the programme" }, place: inProgramme, weight: odds.programme },
    ...way.boxes.flatMap((_, at) => [...supplyOf(way, at), ...intoBox(way, at)]),
  ];
  return all
    .filter(({ weight }) => weight > 0)
    .map(({ cause, place, weight, own }) => ({
      cause,
      weight,
      meant: (trial) => inOrder(trial, own?.(trial) ?? byPlace(way, trial, place)),
    }));
}

/** A supply hums before the knob as well as behind it. */
function supplyOf({ boxes }: Way, at: number): readonly Humming[] {
  const box = boxes[at];
  if (box === undefined) return [];
  const { part, supply } = box;
  const own = (trial: Trial) =>
    trial.try === "on battery" && trial.part === part ? gone : undefined;
  return [beforeKnob(at), behindKnob(at)].map((place) => ({
    cause: { cause: "power supply", part },
    place,
    weight: odds.supply[supply] / 2,
    own,
  }));
}

/** What comes in on the way into a box, by the leads from the one before. */
function intoBox(way: Way, at: number): readonly Humming[] {
  const [from, box] = [way.boxes[at - 1], way.boxes[at]];
  if (from === undefined || box === undefined || from.link) return [];
  const place = behindKnob(at - 1);
  const [lead = box.part] = from.wires;
  const kind = box.balanced ? "balanced" : "unbalanced";
  return [
    {
      cause: { cause: "ground loop", part: box.part },
      place,
      weight: loopOdds(way, at),
      own: (trial) => ofLoop(trial, [from.part, box.part]),
    },
    {
      cause: { cause: "loop by another lead", part: box.part },
      place,
      weight: isEarthed(from) && isEarthed(box) ? odds.hiddenLoop[kind] : 0,
      own: (trial) =>
        trial.try === "other leads out" ? gone : ofLoop(trial, [from.part, box.part]),
    },
    {
      cause: { cause: "lead picks it up", part: lead },
      place,
      weight: odds.pickup[kind],
      own: (trial) => (isBent(trial, from.wires) ? mixed(0.7, moves, still) : undefined),
    },
    ...from.wires.map(
      (part): Humming => ({
        cause: { cause: "return lost", part },
        place,
        weight: lostReturns(way, box.part, part),
        own: (trial) => (isBent(trial, [part]) ? mixed(0.6, moves, still) : undefined),
      }),
    ),
  ];
}

/** A hand at a lead, or at one of its plugs. */
const isBent = (trial: Trial, leads: readonly string[]): boolean =>
  (trial.try === "lead bent" || trial.try === "plugs turned") && leads.includes(trial.part);

/** A loop is broken by a battery at either end, and is smaller from one outlet. */
function ofLoop(trial: Trial, boxes: readonly string[]): Shares | undefined {
  if (trial.try === "on battery" && boxes.includes(trial.part)) return gone;
  return trial.try === "one outlet" ? mixed(0.4, gone, mixed(0.6, less, same)) : undefined;
}

/** By two earths that are drawn, as the circuit has it. */
function loopOdds({ rig, boxes }: Way, at: number): number {
  const [from, box] = [boxes[at - 1], boxes[at]];
  if (from === undefined || box === undefined) return 0;
  return isEarthed(from) && isEarthed(box) ? odds.loop[humRisk(pickedUp(rig, box.part))] : 0;
}

/** By its supply, or by another lead of it. */
const isEarthed = ({ supply }: Way["boxes"][number]): boolean => supply !== "battery";

const louder = ["none", "some", "loud"] as const;

const lost = new WeakMap<Way["rig"], Map<string, number>>();

/** Of a lead's own faults those that make more hum than there is: asked of the circuit, and remembered. */
function lostReturns({ rig }: Way, box: string, lead: string): number {
  const known = lost.get(rig) ?? new Map<string, number>();
  lost.set(rig, known);
  const key = `${lead} / ${box}`;
  const found = known.get(key) ?? weightOfLost(rig, box, lead);
  known.set(key, found);
  return found;
}

function weightOfLost(rig: Way["rig"], box: string, lead: string): number {
  const step = circuitInto(rig, box);
  const risk = (volts: ReturnType<typeof pickedUp>) => louder.indexOf(humRisk(volts));
  const healthy = risk(pickedUp(rig, box));
  return rigFaults(rig)
    .filter((one) => one.part === lead && step.owns(one) && !one.comesAndGoes)
    .filter((one) => risk(pickedUp(rig, box, [one])) > healthy)
    .reduce((sum, { weight }) => sum + weight, 0);
}
