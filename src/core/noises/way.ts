import { feedTo, type Stage } from "#core/level/stages.ts";
import { knobSetting } from "#core/level/told.ts";
import { chassis, type Supply } from "#core/parts/boxes.ts";
import { isFed, reachInto, wiresBetween } from "#core/rig/reach.ts";
import { type BuiltRig, socketOf, wornAt } from "#core/rig/rig.ts";

/** A box on the way to a pair of ears, and the wires that go on from it. */
export interface Box {
  readonly part: string;
  readonly socket: string;
  /** Whether something turns this output up and down. */
  readonly knob: boolean;
  /** How far its knob is up is told. */
  readonly told: boolean;
  /** The knob is a picture on a screen, and no track that wears. */
  readonly soft: boolean;
  readonly supply: Supply;
  /** What goes on from here goes by radio or as numbers. */
  readonly link: boolean;
  /** Leads and adapters to the next, nearest to the source first. */
  readonly wires: readonly string[];
  /** Takes the difference of two legs. */
  readonly balanced: boolean;
}

/**
 * The way to a position as noises see it. A place on it is a number: before the knob of the box at `k` it is 2k, behind it, as all the way into the next box,
 * 2k + 1; what is in the programme is at -1. Whatever is turned down is gone from there on upwards.
 */
export interface Way {
  readonly rig: BuiltRig;
  readonly position: string;
  readonly stages: readonly Stage[];
  readonly boxes: readonly Box[];
  readonly worn: string;
}

export const inProgramme = -1;
export const beforeKnob = (box: number): number => 2 * box;
export const behindKnob = (box: number): number => 2 * box + 1;

const soft: readonly string[] = ["laptop", "phone"];

/** The way to a position; nothing where nobody listens or nothing feeds it. */
export function wayTo(rig: BuiltRig, position: string): Way | undefined {
  const feed = feedTo(rig, position);
  if (feed === undefined || feed.stages.length === 0) return undefined;
  const worn = wornAt(rig, position);
  const boxes = feed.stages.map(({ part, socket, knob }, at): Box => {
    const next = feed.stages[at + 1]?.part ?? worn;
    const box = rig.part(part);
    const settings = rig.parts.find(({ id }) => id === part)?.settings;
    return {
      part,
      socket,
      knob: knob !== undefined,
      told: typeof settings?.[knobSetting(socket)] === "number",
      soft: soft.includes(box.kind),
      supply: supplyOf(rig, part),
      link: socketOf(box, socket).kind === "link",
      wires: wiresBetween(rig, next),
      balanced: at > 0 && isBalanced(rig, part),
    };
  });
  return { rig, position, stages: feed.stages, boxes, worn };
}

/** By what stands between its chassis and earth. */
function supplyOf(rig: BuiltRig, part: string): Supply {
  const names = rig.part(part).body.map(({ name }) => name);
  if (names.includes("mains earth")) return "mains-earthed";
  return names.includes("mains") ? "floating" : "battery";
}

const isBalanced = (rig: BuiltRig, part: string): boolean =>
  rig.part(part).takes.every(({ minus }) => minus !== chassis && !minus.endsWith(".sleeve"));

/** The last place on the way to a position that another shares with it; -1 where they share the programme alone. */
export function sharedUpTo({ rig, boxes }: Way, other: string): number {
  const theirs = partsInto(rig, other);
  const last = boxes.findLastIndex(({ part }) => theirs.has(part));
  const box = boxes[last];
  if (box === undefined) return inProgramme;
  return theirs.get(box.part) === box.socket ? behindKnob(last) : beforeKnob(last);
}

/** The boxes on the way to a position, and the socket that each is left by. */
function partsInto(rig: BuiltRig, position: string): ReadonlyMap<string, string> {
  const parts = new Map<string, string>();
  for (let part = wornAt(rig, position); isFed(rig, part); ) {
    const { from, ends } = reachInto(rig, part);
    parts.set(from, ends.find(({ into }) => into === from)?.socket ?? "");
    part = from;
  }
  return parts;
}

/** Whether a part is a box that a lead goes into, so that the lead may be pulled out of it. */
export const isCabled = (way: Way, box: number): boolean =>
  box > 0 && way.boxes[box - 1]?.link === false;
