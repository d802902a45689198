import {
  type Connection,
  clientId,
  listenerOf,
  operatorId,
  type Rig,
  type RigPart,
} from "#core/rig/rig.ts";
import type { LeadChoice, Method } from "./choice.ts";
import { type Side, sidesOf } from "./ends.ts";
import { farFor, nearFor } from "./proving-sockets.ts";

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
  const lead: RigPart = {
    id: leadId,
    kind,
    untried,
    ...(settings === undefined ? {} : { settings }),
  };
  return {
    name: `${kind}, proved by ${by}`,
    parts: [near.part, lead, ...far.parts.map(good), ...people(by)].map((part) =>
      part.id === leadId ? part : good(part),
    ),
    plugged: [...plugged(from, near.part.id, near.sockets), ...far.plugged].map((one) =>
      by === "meter" ? { ...one, sure: true } : one,
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

/** Nobody ordered anything, and whoever listens and writes down tells left from right. */
const people = (by: Method): readonly RigPart[] => [
  { id: operatorId, kind: "operator" },
  { id: clientId, kind: "client" },
  ...(by === "ear" ? [{ id: listenerOf(provedAt), kind: "listener" } as const] : []),
];
