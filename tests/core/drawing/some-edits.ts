import fc from "fast-check";
import { added } from "#core/drawing/adding.ts";
import { kindPut, leadPut, otherLeads, partSet } from "#core/drawing/changing.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Edited } from "#core/drawing/edited.ts";
import { partNamed, positionMoved, positionNamed } from "#core/drawing/names.ts";
import { placesFor } from "#core/drawing/places.ts";
import type { Called } from "#core/drawing/putting.ts";
import { partRemoved, positionRemoved } from "#core/drawing/removing.ts";
import { replugged, spotsFor, unplugged } from "#core/drawing/replugging.ts";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";

const called: Called = (kind) => english.patching.kinds[kind].name;
const kinds = (Object.keys(catalogue) as PartKind[]).filter(
  (kind) => catalogue[kind].family !== "person",
);

/** One edit, as numbers that choose among what a rig has. */
export interface SomeEdit {
  readonly edit: (typeof edits)[number];
  readonly one: number;
  readonly other: number;
}

const edits = [
  "add",
  "add",
  "copy",
  "copy",
  "re-plug",
  "re-plug",
  "unplug",
  "name",
  "tape",
  "order",
  "set",
  "kind",
  "lead",
  "remove",
  "remove position",
] as const;

export const someEdit: fc.Arbitrary<SomeEdit> = fc.record({
  edit: fc.constantFrom(...edits),
  one: fc.nat(1000),
  other: fc.nat(1000),
});

const pick = <One>(all: readonly One[], number: number): One | undefined =>
  all[number % Math.max(all.length, 1)];

/** What the numbers of an edit choose. */
interface Chosen {
  readonly rig: Rig;
  readonly one: number;
  readonly other: number;
}

/** The edit in a rig; the rig as it is where there is nothing to choose. */
export const edit = (rig: Rig, { edit: name, one, other }: SomeEdit): Edited =>
  does[name]({ rig, one, other }) ?? { rig };

const partIn = ({ rig, one }: Chosen) => pick(rig.parts, one);
const seatIn = ({ rig, one }: Chosen) => pick(rig.positions, one)?.id ?? "";

const does: Readonly<Record<SomeEdit["edit"], (chosen: Chosen) => Edited | undefined>> = {
  add: ({ rig, one, other }) => {
    const kind = pick(kinds, one);
    const place = kind && pick(placesFor(build(rig), kind), other);
    return kind && place && added(rig, kind, place, called);
  },
  copy: (at) => positionCopied(at.rig, seatIn(at)),
  "re-plug": ({ rig, one, other }) => {
    const end = pick(rig.plugged, one);
    const spot = end && pick(spotsFor(build(rig), end), other);
    return spot && end && replugged(rig, { part: end.part, plug: end.plug }, spot);
  },
  unplug: ({ rig, one }) => {
    const end = pick(rig.plugged, one);
    return end && unplugged(rig, end);
  },
  name: (at) => partNamed(at.rig, partIn(at)?.id ?? "", `thing ${at.other}`),
  tape: (at) => positionNamed(at.rig, seatIn(at), `${at.other} tape`),
  order: (at) => positionMoved(at.rig, seatIn(at), at.other % 2 === 0 ? 1 : -1),
  set: (at) => {
    const part = partIn(at);
    return part && setting(at.rig, part.id, part.kind, at.other);
  },
  kind: (at) => {
    const kind = pick(kinds, at.other);
    return kind && kindPut(at.rig, partIn(at)?.id ?? "", kind, called);
  },
  lead: (at) => {
    const part = partIn(at);
    const lead = part && pick(otherLeads(at.rig, part.id), at.other);
    return part && lead && leadPut(at.rig, part.id, lead.kind);
  },
  remove: (at) => partRemoved(at.rig, partIn(at)?.id ?? ""),
  "remove position": (at) => positionRemoved(at.rig, seatIn(at)),
};

function setting(rig: Rig, id: string, kind: PartKind, number: number): Edited | undefined {
  const parameter = pick(Object.entries(catalogue[kind].parameters), number);
  if (parameter === undefined) return undefined;
  const [name, of] = parameter;
  if ("choices" in of) return partSet(rig, id, name, pick(of.choices, number));
  return partSet(rig, id, name, number % 2 === 0 ? of.most : of.least);
}

/** A rig after some edits, what is refused left out. */
export const after = (rig: Rig, some: readonly SomeEdit[]): Rig =>
  some.reduce((now, one) => {
    const edited = edit(now, one);
    return "rig" in edited ? edited.rig : now;
  }, rig);
