import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { contactsAt } from "#core/parts/contacts-joined.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { PlugKind } from "#core/parts/plugs.ts";

/** What a lead may have at one of its two ends: a plug, two of them, or an in-line socket. */
export const leadEnds = [
  "TRS",
  "TS",
  "XLR",
  "two TS",
  "two TRS",
  "two RCA",
  "two XLR",
  "TRS socket",
] as const;
export type LeadEnd = (typeof leadEnds)[number];

/** One end of a lead: what is there, and how its plugs or its socket are called. */
export interface Side {
  readonly end: LeadEnd;
  readonly names: readonly string[];
  /** Of each plug; of a socket, the plug that fits it. */
  readonly plug: PlugKind;
}

/** A lead as two ends. Of a forked one the stem is the first. */
export interface Sides {
  readonly one: Side;
  readonly other: Side;
}

const isFirst = (name: string): boolean => /^(near|stem|plug)/.test(name);

/** The two ends of a kind of lead or adapter; none of a part that is no lead, or has other ends. */
export function sidesOf(kind: PartKind, settings?: Settings): Sides | undefined {
  const { family, make } = catalogue[kind];
  if (family !== "lead" && family !== "adapter") return undefined;
  const { plugs, sockets } = make(settings);
  const all = [
    ...plugs.map(({ name, kind: plug }) => ({ name, plug: plug as string, socket: false })),
    ...sockets.map(({ name, kind: plug }) => ({ name, plug: plug as string, socket: true })),
  ];
  const [one, other] = [true, false].map((first) =>
    sideOf(all.filter(({ name }) => isFirst(name) === first)),
  );
  return one === undefined || other === undefined ? undefined : { one, other };
}

interface Called {
  readonly name: string;
  readonly plug: string;
  readonly socket: boolean;
}

function sideOf(ends: readonly Called[]): Side | undefined {
  const [first] = ends;
  if (first === undefined || ends.some(({ plug }) => plug !== first.plug)) return undefined;
  const called = `${ends.length === 2 ? "two " : ""}${first.plug}${first.socket ? " socket" : ""}`;
  const end = leadEnds.find((one) => one === called);
  const names = ends.map(({ name }) => name);
  return end === undefined || ends.length > 2
    ? undefined
    : { end, names, plug: first.plug as PlugKind };
}

/** Every kind of lead and adapter that can be proved: both of its ends are known. */
export const provable: readonly PartKind[] = (Object.keys(catalogue) as PartKind[]).filter(
  (kind) => sidesOf(kind) !== undefined,
);

/** The kinds of lead with these ends, whichever way round. */
export const kindsWith = (one: LeadEnd, other: LeadEnd): readonly PartKind[] =>
  provable.filter((kind) => {
    const sides = sidesOf(kind);
    const ends = [sides?.one.end, sides?.other.end];
    return (ends[0] === one && ends[1] === other) || (ends[0] === other && ends[1] === one);
  });

/** The contacts of a kind of lead, those of its first end before those of the other. */
export function contactsOfLead(kind: PartKind, settings?: Settings) {
  const all = contactsAt(catalogue[kind].make(settings));
  return [...all.filter(({ at }) => isFirst(at)), ...all.filter(({ at }) => !isFirst(at))];
}
