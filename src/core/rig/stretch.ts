import type { Circuit, Element } from "#core/circuit/circuit.ts";
import type { Edit } from "#core/parts/part.ts";
import { contactsOf } from "#core/parts/plugs.ts";
import { controlOf } from "./controls.ts";
import { earthsBeyond } from "./earths.ts";
import { edited } from "./edited.ts";
import { inTheAir, mating, plugged } from "./mating.ts";
import { placed } from "./placed.ts";
import { reachInto } from "./reach.ts";
import { type BuiltRig, type Connection, socketOf } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";

/** Everything between the outputs that feed a part and what that part takes in, solved as one circuit. */
export interface Stretch {
  /** The part whose outputs drive it. */
  readonly from: string;
  readonly circuit: Circuit;
}

/** What is kept of a circuit into a part. */
interface Kept {
  /** With nothing wrong in it. */
  readonly circuit: Circuit;
  /** What else ties its boxes to earth. */
  readonly earths: Circuit;
  /** With one thing plugged or set otherwise, by the fault's id. */
  readonly otherwise: Map<string, Circuit>;
}

const known = new WeakMap<BuiltRig, Map<string, Kept>>();

/** The circuit into a part, with all that hangs on it, as a fault set leaves it, in whichever order its faults are told. */
export function stretchInto(rig: BuiltRig, part: string, told: readonly RigFault[]): Stretch {
  const { from } = reachInto(rig, part);
  const faults = told.length < 2 ? told : told.toSorted((a, b) => (a.id < b.id ? -1 : 1));
  return { from, circuit: edited(unbroken(rig, part, faults), faults) };
}

/** The circuit before anything in it is broken, plugged and set as some faults leave it. */
function unbroken(rig: BuiltRig, part: string, faults: readonly RigFault[]): Circuit {
  const { circuit, earths, otherwise } = keptOf(rig, part);
  const moves = faults.filter(({ edits }) => edits.some(({ edit }) => !wired.includes(edit)));
  const [first] = moves;
  if (first === undefined) return circuit;
  const now = () => [...assembled(rig, part, moves), ...earths];
  if (moves.length > 1) return now();
  const found = otherwise.get(first.id) ?? now();
  otherwise.set(first.id, found);
  return found;
}

function keptOf(rig: BuiltRig, part: string): Kept {
  const circuits = known.get(rig) ?? new Map<string, Kept>();
  known.set(rig, circuits);
  const found = circuits.get(part) ?? newlyInto(rig, part);
  circuits.set(part, found);
  return found;
}

function newlyInto(rig: BuiltRig, part: string): Kept {
  const earths = earthsBeyond(rig, part, (other) => assembled(rig, other, []));
  return { circuit: [...assembled(rig, part, []), ...earths], earths, otherwise: new Map() };
}

/** Edits that change a circuit where it is, and nothing of what is plugged where or how it is set. */
const wired: readonly Edit["edit"][] = ["ohms", "bridge", "rewire"];

/** Boxes, wires and plugs together, before anything in them is broken. */
function assembled(rig: BuiltRig, part: string, faults: readonly RigFault[]): Circuit {
  const { from, wires, takers, ends } = reachInto(rig, part);
  const now = plugged(ends, faults);
  const normals = (id: string) => normalsOf(rig, id, plugged(rig.plugged, faults));
  const level = controlOf(rig, from, faults);
  const used = now.filter(({ into }) => into === from).map(({ socket }) => socket);
  const outputs = new Set([...used, ...joinedBy(rig, from, normals(from))]);
  const sent = [...outputs].flatMap((socket) =>
    socketOf(rig.part(from), socket).circuit.map((element) => turned(element, level)),
  );
  const taken = takers.flatMap((id) => placed(id, socketsOf(rig, id, "in")));
  const passed = wires.flatMap((id) => placed(id, socketsOf(rig, id, "through")));
  const bodies = [...new Set([from, ...wires, ...takers])].flatMap((id) =>
    placed(id, [...rig.part(id).body, ...normals(id)]),
  );
  const mated = now.flatMap((end) => mating(rig, end, faults));
  const loose = wires.flatMap((id) => looseEnds(rig, id, ends));
  return [...taken, ...placed(from, sent), ...passed, ...bodies, ...mated, ...loose];
}

/** The contacts of plugs that stand in no socket hang in the air. */
const looseEnds = (rig: BuiltRig, id: string, ends: readonly Connection[]): Circuit =>
  rig
    .part(id)
    .plugs.filter(({ name }) => !ends.some(({ part, plug }) => part === id && plug === name))
    .flatMap((plug) => inTheAir(id, plug.name, contactsOf(plug.kind)));

const socketsOf = (rig: BuiltRig, id: string, side: "in" | "through"): Circuit =>
  rig.part(id).sockets.flatMap((socket) => (socket.side === side ? socket.circuit : []));

/** What a part's normals join while the sockets that break them are empty. */
function normalsOf(rig: BuiltRig, id: string, now: readonly Connection[]): Circuit {
  const used = now.filter(({ into }) => into === id).map(({ socket }) => socket);
  return (rig.part(id).normals ?? []).flatMap(({ whileEmpty, circuit }) =>
    whileEmpty.some((socket) => used.includes(socket)) ? [] : circuit,
  );
}

/** The sockets that normals reach, whether or not anything stands in them. */
const joinedBy = (rig: BuiltRig, id: string, normals: Circuit): readonly string[] =>
  rig
    .part(id)
    .sockets.map(({ name }) => name)
    .filter((name) =>
      normals.some(({ a, b }) => a.startsWith(`${name}.`) || b.startsWith(`${name}.`)),
    );

/** A source as its volume leaves it. */
function turned(element: Element, level: (name: string) => number): Element {
  if (element.kind !== "source" || element.level === undefined) return element;
  const by = level(element.level);
  const drive = Object.fromEntries(
    Object.entries(element.drive).map(([bus, gain]) => [bus, gain * by]),
  );
  return { ...element, drive };
}
