import { contactsJoined } from "#core/parts/contacts-joined.ts";
import type { Part, Plug } from "#core/parts/part.ts";
import { type Contact, fits } from "#core/parts/plugs.ts";
import type { Connection } from "#core/rig/rig.ts";
import type { Ends, Patch } from "./patch.ts";
import { leads, made, type Piece, type Place, passing, placesOf } from "./pieces.ts";

/** How far a search goes: leads alone, or adapters at either end as well. */
export type Reach = "leads" | "adapters";

/**
 * Every patch of one lead, or of two alike, and further on with an adapter at either end, whose plugs all find a socket. Several sockets of
 * the source are a pair marked left and right, and no two of them are joined. Not all patches do any good.
 */
export function* candidates(
  ends: Ends,
  reach: Reach,
  sockets?: readonly string[],
): Generator<Patch> {
  const from = placesOf(made(ends.from), "out", "from").filter(
    ({ socket }) => sockets === undefined || sockets.includes(socket.name),
  );
  const into = made(ends.into);
  if (into.made.plugs.length > 0) yield* straightIn(into, from, reach);
  else if (reach === "leads") yield* byLead(from, placesOf(into, "in", "into"));
  else yield* byAdapter(from, placesOf(into, "in", "into"));
}

/** Sockets, and what was plugged to get to them. */
interface Passed {
  readonly wires: readonly Piece[];
  readonly plugged: readonly Connection[];
  readonly sockets: readonly Place[];
}

const at = (sockets: readonly Place[]): Passed => ({ wires: [], plugged: [], sockets });

/** Every adapter, extension or splitter in every socket that it goes into. */
function* passedBy(id: string, before: Passed, end: Place["end"]): Generator<Passed> {
  for (const piece of passing(id))
    for (const plugged of placings(piece, before.sockets))
      yield {
        wires: [...before.wires, piece],
        plugged: [...before.plugged, ...plugged],
        sockets: placesOf(piece, "through", end),
      };
}

/** Headphones into an output, by nothing; by an adapter or extension, or by two. */
function* straightIn(worn: Piece, from: readonly Place[], reach: Reach): Generator<Patch> {
  if (reach === "leads") return yield* wornAt(worn, at(from));
  for (const one of passedBy("adapter", at(from), "from")) {
    yield* wornAt(worn, one);
    for (const two of passedBy("second adapter", one, "from")) yield* wornAt(worn, two);
  }
}

function* wornAt(worn: Piece, { wires, plugged, sockets }: Passed): Generator<Patch> {
  const places = wires.length === 0 ? sockets : sockets.slice(0, 1);
  for (const last of placings(worn, places)) yield patch(wires, [...plugged, ...last]);
}

/** Leads between the sockets of two boxes. */
function* byLead(from: readonly Place[], into: readonly Place[]): Generator<Patch> {
  for (const lead of leads("lead")) {
    for (const plugged of across(lead, from, into)) yield patch([lead], plugged);
    if (lead.made.plugs.length === 2) yield* byTwo(lead, from, into);
  }
}

/** A lead and an adapter at one of its ends. Nothing that has several sockets is put before an input. */
function* byAdapter(from: readonly Place[], into: readonly Place[]): Generator<Patch> {
  for (const near of passedBy("adapter", at(from), "from")) yield* leadBetween(near, at(into));
  for (const far of passedBy("adapter", at(into), "into"))
    if (far.sockets.length === 1) yield* leadBetween(at(from), far);
}

function* leadBetween(near: Passed, far: Passed): Generator<Patch> {
  for (const lead of leads("lead"))
    for (const plugged of across(lead, near.sockets, far.sockets))
      yield patch(
        [...near.wires, lead, ...far.wires],
        [...near.plugged, ...plugged, ...far.plugged],
      );
}

/** Two leads alike, side by side. */
function* byTwo(lead: Piece, from: readonly Place[], into: readonly Place[]): Generator<Patch> {
  const second = { ...lead, id: `second ${lead.id}` };
  for (const first of across(lead, from, into)) {
    const free = (place: Place) => !first.some((end) => isAt(end, place));
    for (const other of across(second, from.filter(free), into.filter(free))) {
      const plugged = [...first, ...other];
      if (arePair(plugged, from)) yield patch([lead, second], plugged);
    }
  }
}

/** Whether the sockets that some plugs leave by are one, or two that are marked left and right; an adapter's count as one. */
function arePair(plugged: readonly Connection[], from: readonly Place[]): boolean {
  const used = from.filter((place) => plugged.some((end) => isAt(end, place)));
  const [one, other] = used;
  if (other === undefined) return true;
  if (one?.socket.side === "through") return true;
  return used.length === 2 && one?.socket.partner === other.socket.name;
}

const isAt = (end: Connection, { into, socket }: Place): boolean =>
  end.into === into && end.socket === socket.name;

const patch = (pieces: readonly Piece[], plugged: readonly Connection[]): Patch => ({
  wires: pieces.map(({ id, kind, settings }) => ({ id, kind, ...(settings ? { settings } : {}) })),
  plugged,
});

/** The ways to plug everything of a lead in that join the two ends. */
function* across(
  lead: Piece,
  from: readonly Place[],
  into: readonly Place[],
): Generator<readonly Connection[]> {
  const joined = joinedPlugs(lead.made);
  for (const plugged of placings(lead, [...from, ...into])) {
    const out = plugged.filter((end) => from.some((place) => isAt(end, place)));
    const leaving = out.map(({ plug }) => plug);
    if (out.length === 0 || out.length === plugged.length) continue;
    if (arePair(plugged, from) && !joined.some(both(leaving))) yield plugged;
  }
}

const both =
  (plugs: readonly string[]) =>
  ([one, other]: readonly [string, string]): boolean =>
    plugs.includes(one) && plugs.includes(other);

/** Plugs of a lead that carry one signal: two outputs by them would drive one another. A ring on the sleeve carries none. */
function joinedPlugs(part: Part): readonly (readonly [string, string])[] {
  return contactsJoined(part)
    .filter(({ contact, to }) => ![contact, ...to.map((one) => one.contact)].some(isReturn))
    .flatMap(({ at, to }) => to.map((one) => [at, one.at] as const));
}

const isReturn = (contact: Contact): boolean => contact === "sleeve" || contact === "pin 1";

/** The ways to plug every plug of a part into sockets of its own. */
function* placings(
  piece: Piece,
  places: readonly Place[],
  plugs: readonly Plug[] = piece.made.plugs,
): Generator<readonly Connection[]> {
  const [plug, ...rest] = plugs;
  if (plug === undefined) {
    yield [];
    return;
  }
  for (const place of places.filter(({ socket }) => fits(plug, socket))) {
    const end = { part: piece.id, plug: plug.name, into: place.into, socket: place.socket.name };
    const left = places.filter((one) => one !== place);
    for (const others of placings(piece, left, rest)) yield [end, ...others];
  }
}
