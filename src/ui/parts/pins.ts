import { contactsJoined } from "#core/parts/contacts-joined.ts";
import type { Contact, JackSize, PlugKind, SocketKind } from "#core/parts/plugs.ts";
import type { Ends, Patch } from "#core/patching/patch.ts";
import { made } from "#core/patching/sockets-of.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { carriedBy, isSignal, type Shown, shown } from "./content.ts";

/** One end of a lead or adapter as it is soldered: what it is, what it goes into, and its contacts. */
export interface PinEnd {
  readonly name: string;
  readonly kind: PlugKind;
  readonly size?: JackSize | undefined;
  /** An in-line socket instead of a plug. */
  readonly isSocket: boolean;
  /** The part and the socket that the plug goes into. */
  readonly goesInto?: { readonly into: string; readonly socket: string };
  readonly contacts: readonly Contact[];
}

/** A contact that metal joins to one at the other side, and what it carries where that is known. */
export interface PinWire {
  readonly from: { readonly end: string; readonly contact: Contact };
  readonly to: { readonly end: string; readonly contact: Contact };
  readonly shown?: Shown;
  readonly isReturn: boolean;
}

/** A lead spelled out: its ends at the source's side and at the other, and what joins them. */
export interface Spelled {
  readonly part: RigPart;
  readonly west: readonly PinEnd[];
  readonly east: readonly PinEnd[];
  readonly wires: readonly PinWire[];
}

const plugAs: Readonly<Partial<Record<SocketKind, PlugKind>>> = {
  "TRS with a deep spring": "TRS",
  "four-pole, common on ring 2": "TRRS",
  "four-pole, common on sleeve": "TRRS",
};

/** The wires of a patch, pin by pin, from the source on. */
export function spelledOut(ends: Ends, patch: Patch): readonly Spelled[] {
  const near = (part: RigPart): number =>
    patch.plugged.some((end) => end.part === part.id && end.into === ends.from.id) ? 0 : 1;
  return [...patch.wires]
    .sort((a, b) => near(a) - near(b))
    .map((part) => spelled(ends, patch, part));
}

function spelled(ends: Ends, patch: Patch, part: RigPart): Spelled {
  const all = endsOf(patch, part);
  const west = all.filter((end) => isWest(ends, patch, part, end));
  const east = all.filter((end) => !west.includes(end));
  const names = west.map(({ name }) => name);
  const wires = contactsJoined(made(part))
    .filter(({ at }) => names.includes(at))
    .flatMap(({ at, contact, to }) =>
      to
        .filter((one) => !names.includes(one.at))
        .map((one): PinWire => {
          const end = west.find(({ name }) => name === at);
          const carried = end && onContact(ends, end, contact);
          return {
            from: { end: at, contact },
            to: { end: one.at, contact: one.contact },
            isReturn: !isSignal(contact) && !isSignal(one.contact),
            ...(carried === undefined ? {} : { shown: carried }),
          };
        }),
    );
  return { part, west, east, wires };
}

function endsOf({ plugged }: Patch, part: RigPart): readonly PinEnd[] {
  const { plugs, sockets, ...rest } = made(part);
  const joined = contactsJoined({ plugs, sockets, ...rest });
  const contacts = (name: string): readonly Contact[] =>
    joined.filter(({ at }) => at === name).map(({ contact }) => contact);
  return [
    ...plugs.map(({ name, kind, size }): PinEnd => {
      const at = plugged.find((end) => end.part === part.id && end.plug === name);
      const goesInto = at && { into: at.into, socket: at.socket };
      return {
        name,
        kind,
        size,
        isSocket: false,
        contacts: contacts(name),
        ...(goesInto ? { goesInto } : {}),
      };
    }),
    ...sockets.map(
      ({ name, kind, size }): PinEnd => ({
        name,
        kind: plugAs[kind] ?? (kind as PlugKind),
        size,
        isSocket: true,
        contacts: contacts(name),
      }),
    ),
  ];
}

/** Whether an end looks to the source: its plug is there, or in something that is; or it is a socket that such a plug stands in. */
function isWest({ from, into }: Ends, patch: Patch, part: RigPart, end: PinEnd): boolean {
  if (end.goesInto?.into === from.id) return true;
  if (end.goesInto?.into === into.id) return false;
  const { plugged } = patch;
  const leaves = plugged.some((one) => one.part === part.id && one.into === from.id);
  if (end.isSocket) return !leaves;
  return !leaves && plugged.some((one) => one.part === end.goesInto?.into && one.into === from.id);
}

/** What a contact of a plug at the source carries. */
function onContact({ from }: Ends, { goesInto }: PinEnd, contact: Contact): Shown | undefined {
  if (goesInto?.into !== from.id) return undefined;
  const part = made(from);
  const socket = part.sockets.find(({ name }) => name === goesInto.socket);
  const carried = socket && carriedBy(part, socket).find((one) => one.contact === contact);
  return carried && shown(carried.content);
}
