import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Family, Kind, Settings } from "#core/parts/kind.ts";
import type { Fault, Part, Plug, Socket } from "#core/parts/part.ts";

export interface RigPart {
  readonly id: string;
  /** What it was called when it was first drawn, where it was given another name since. */
  readonly first?: string;
  readonly kind: PartKind;
  readonly settings?: Settings;
  /** Controls that were set otherwise than such a part usually stands. */
  readonly controls?: Readonly<Record<string, number>>;
  /** It is known to be good: nothing is wrong with it. */
  readonly good?: boolean;
  /** Its wires were soldered just now and nobody tried them: what cannot be seen is so many times as likely wrong as in a lead in use. */
  readonly untried?: number;
}

/** Which plug is in which socket. */
export interface Connection {
  readonly part: string;
  readonly plug: string;
  readonly into: string;
  readonly socket: string;
  /** It is known to be home and where it belongs. */
  readonly sure?: boolean;
}

/** What somebody may want in place of stereo: both sides in both ears, or all of it in one ear. */
export const wantedFeeds = ["mono", "left ear", "right ear"] as const;
export type WantedFeed = (typeof wantedFeeds)[number];

/** A place where somebody listens, or where an instrument stands. */
export interface Position {
  readonly id: string;
  readonly name: string;
  /** The headphones there, or the instrument, a part of the rig. */
  readonly wears: string;
  /** They are worn the other way round on purpose, to see what changes. */
  readonly turned?: boolean;
  /** What is sent there, by whoever sends it, because it is wanted so; left out, stereo. */
  readonly wants?: WantedFeed;
}

/** A rig as drawn: parts and which end is in which socket. Plain data, as it stands in the log. */
export interface Rig {
  readonly name: string;
  readonly parts: readonly RigPart[];
  readonly plugged: readonly Connection[];
  readonly positions: readonly Position[];
}

/** A part as its settings make it, and what kind it is. */
export interface BuiltPart extends Part {
  readonly kind: PartKind;
  readonly family: Family;
}

/** A rig with its parts looked up, so that nothing is built twice. */
export interface BuiltRig extends Rig {
  readonly part: (id: string) => BuiltPart;
}

/** Who listens at a position, as a part with faults of its own. */
export const listenerOf = (position: string): string => `${position}: listener`;
export const operatorId = "operator";
/** Whoever ordered the feed, and may have wanted it in mono or in one ear. */
export const clientId = "client";

/**
 * Looks up every part, and adds the people that are not drawn: one listener a position where somebody listens, one operator, one client. Throws
 * on a name that no part bears.
 */
export function build(rig: Rig): BuiltRig {
  const built = new Map(rig.parts.map((part) => [part.id, made(part)]));
  const people: readonly RigPart[] = [
    { id: operatorId, kind: "operator" },
    { id: clientId, kind: "client" },
    ...rig.positions
      .filter(({ wears }) => built.get(wears)?.measures === undefined)
      .map(({ id }): RigPart => ({ id: listenerOf(id), kind: "listener" })),
  ];
  const added = people.filter(({ id }) => !built.has(id));
  for (const person of added) built.set(person.id, made(person));
  const part = (id: string): BuiltPart => {
    const found = built.get(id);
    if (found === undefined) throw new Error(`the rig has no part named ${id}`);
    return found;
  };
  return { ...rig, parts: [...rig.parts, ...added], part };
}

/** The instrument at a position; none where somebody listens. Throws on a position the rig lacks. */
export const instrumentAt = (rig: BuiltRig, position: string): Part["measures"] =>
  rig.part(wornAt(rig, position)).measures;

/** Throws, with the part's name, on a kind the catalogue lacks and on a setting that its kind does not understand. */
function made({ id, kind, settings, controls, good, untried = 1 }: RigPart): BuiltPart {
  const known: Kind | undefined = catalogue[kind];
  if (known === undefined) throw new Error(`${id}: there is no kind of part named ${kind}`);
  try {
    const part = known.make(settings);
    return {
      ...part,
      kind,
      family: known.family,
      controls: { ...part.controls, ...controls },
      faults: good ? [] : part.faults.map((fault) => likelier(fault, untried)),
    };
  } catch (error) {
    throw new RangeError(`${id}: ${error instanceof Error ? error.message : error}`);
  }
}

const likelier = (fault: Fault, times: number): Fault =>
  fault.seen || times === 1 ? fault : { ...fault, weight: fault.weight * times };

/** What is worn at a position, or the instrument there. Throws on one the rig lacks. */
export function wornAt(rig: Rig, position: string): string {
  const wears = rig.positions.find(({ id }) => id === position)?.wears;
  if (wears === undefined) throw new Error(`the rig has no position named ${position}`);
  return wears;
}

/** The socket of a part by name. Throws where there is none. */
export function socketOf(part: BuiltPart, name: string): Socket {
  const socket = part.sockets.find((one) => one.name === name);
  if (socket === undefined) throw new Error(`a ${part.kind} has no socket named ${name}`);
  return socket;
}

/** The plug of a part by name. Throws where there is none. */
export function plugOf(part: BuiltPart, name: string): Plug {
  const plug = part.plugs.find((one) => one.name === name);
  if (plug === undefined) throw new Error(`a ${part.kind} has no plug named ${name}`);
  return plug;
}
