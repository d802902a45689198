import {
  type Connection,
  clientId,
  listenerOf,
  operatorId,
  type Rig,
  type RigPart,
} from "#core/rig/rig.ts";
import { type LeadChoice, type Method, nameFor } from "./choice.ts";
import { type Side, sidesOf } from "./ends.ts";
import { type Far, farFor, type Near, nearFor } from "./proving-sockets.ts";

/** What the lead is called in its rig, and the one place where something is heard or measured. */
export const leadId = "lead";
export const provedAt = "position 1";

/**
 * So many times as likely as in a lead in use is a slip in one that was just made: about one in four has something. Common practice, no
 * source.
 */
const untried = 20;

/**
 * A rig in which nothing but the lead is suspected, and where it is plugged in, its plugs. Throws on a kind that is no lead with two ends, and on one that the way of proving it
 * has no sockets for.
 */
export function leadRig(choice: LeadChoice): Rig {
  const { kind, settings, by } = choice;
  const sides = sidesOf(kind, settings);
  if (sides === undefined) throw new RangeError(`a ${kind} is no lead with two ends`);
  const legs = sides.other.names.length === 2 && sides.one.names.length === 1;
  const turned =
    legs && (by !== "return" || sides.other.plug === "TRS" || sides.other.plug === "XLR");
  const [from, to] = turned ? [sides.other, sides.one] : [sides.one, sides.other];
  const near = nearFor(from, choice);
  const far = farFor(to, choice);
  const beside = twin(choice, [from, to], near, far);
  const lead: RigPart = {
    id: leadId,
    kind,
    untried,
    ...(settings === undefined ? {} : { settings }),
  };
  return {
    name: nameFor(choice),
    parts: [near.part, lead, ...beside.parts, ...far.parts, ...people(by)].map((part) =>
      part.id === leadId ? part : good(part),
    ),
    plugged: [...plugged(from, near.part.id, near.sockets), ...far.plugged, ...beside.plugged].map(
      (one) => (by === "meter" ? { ...one, sure: true } : one),
    ),
    positions: [{ id: provedAt, name: `1 ${far.end}`, wears: far.end }],
  };
}

const good = (part: RigPart): RigPart => ({ ...part, good: true });

const plugged = (
  { names }: Side,
  into: string,
  sockets: readonly string[],
): readonly Connection[] =>
  names.map((plug, at) => ({ part: leadId, plug, into, socket: sockets[at] ?? "" }));

/**
 * By ear, one signal by itself has neither a wrong level nor a polarity. Where the lead carries one of a pair, one of its kind that is known to be
 * good carries the other side.
 */
function twin(
  { kind, settings, by }: LeadChoice,
  [from, to]: readonly [Side, Side],
  near: Near,
  far: Far,
): Pick<Rig, "parts" | "plugged"> {
  const [first, second] = [near.sockets[0], far.plugged.find(({ part }) => part === leadId)];
  const isHalf = near.sockets.length === 1 && first?.endsWith(" left") === true;
  if (by !== "ear" || !isHalf || second?.socket !== "in left") return { parts: [], plugged: [] };
  const [plug = "", other = ""] = [from.names[0], to.names[0]];
  return {
    parts: [{ id: "good lead", kind, ...(settings === undefined ? {} : { settings }) }],
    plugged: [
      { part: "good lead", plug, into: near.part.id, socket: first.replace("left", "right") },
      { part: "good lead", plug: other, into: second.into, socket: "in right" },
    ],
  };
}

/** Nobody ordered anything, and whoever listens and writes down tells left from right. */
const people = (by: Method): readonly RigPart[] => [
  { id: operatorId, kind: "operator" },
  { id: clientId, kind: "client" },
  ...(by === "ear" ? [{ id: listenerOf(provedAt), kind: "listener" } as const] : []),
];
