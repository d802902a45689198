import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { contactsJoined } from "#core/parts/contacts-joined.ts";
import type { Settings } from "#core/parts/kind.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { type LeadEnd, type Side, sidesOf } from "#core/proving/ends.ts";
import { isSignal } from "./content.ts";
import type { PinEnd, Spelled } from "./pins.ts";

/** A lead that lies on the bench, pin by pin: its first end at the west. Throws on a kind that is no lead with two ends. */
export function leadPins(kind: PartKind, settings?: Settings): Spelled {
  const sides = sidesOf(kind, settings);
  if (sides === undefined) throw new RangeError(`a ${kind} is no lead with two ends`);
  const part = catalogue[kind].make(settings);
  const wires = contactsJoined(part)
    .filter(({ at }) => sides.one.names.includes(at))
    .flatMap(({ at, contact, to }) =>
      to
        .filter((one) => sides.other.names.includes(one.at))
        .map((one) => ({
          from: { end: at, contact },
          to: { end: one.at, contact: one.contact },
          isReturn: !isSignal(contact) && !isSignal(one.contact),
        })),
    );
  return {
    part: { id: kind, kind, ...(settings === undefined ? {} : { settings }) },
    west: endsOf(sides.one),
    east: endsOf(sides.other),
    wires,
  };
}

const endsOf = ({ end, names, plug }: Side): readonly PinEnd[] =>
  names.map((name) => ({
    name,
    kind: plug,
    isSocket: end === "TRS socket",
    contacts: contactsOf(plug),
  }));

/** The plugs or the socket of one kind of end, for a picture of it by itself. */
export const endPins = (end: LeadEnd): readonly Pick<PinEnd, "name" | "kind" | "isSocket">[] =>
  (end.startsWith("two ") ? ["one", "two"] : ["one"]).map((name) => ({
    name,
    kind: plugOf[end],
    isSocket: end === "TRS socket",
  }));

const plugOf: Readonly<Record<LeadEnd, PinEnd["kind"]>> = {
  TRS: "TRS",
  TS: "TS",
  XLR: "XLR",
  "two TS": "TS",
  "two TRS": "TRS",
  "two RCA": "RCA",
  "two XLR": "XLR",
  "TRS socket": "TRS",
};
