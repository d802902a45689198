import type { PartKind } from "#core/parts/catalogue.ts";
import type { Family } from "#core/parts/kind.ts";
import { isFed, reachInto, wiresBetween } from "./reach.ts";
import { type BuiltRig, instrumentAt, listenerOf, wornAt } from "./rig.ts";

/** One thing on the way to a position, as a picture shows it. */
export interface Link {
  readonly part: string;
  readonly kind: PartKind;
  readonly family: Family;
  /** The socket the way leaves a box by, where it does. */
  readonly socket?: string;
}

/** What stands between the source and a position's ears, in order, the listener or the instrument last. */
export function chainTo(rig: BuiltRig, position: string): readonly Link[] {
  const wears = wornAt(rig, position);
  const link = (id: string): Link => ({
    part: id,
    kind: rig.part(id).kind,
    family: rig.part(id).family,
  });
  const listener = instrumentAt(rig, position) === undefined ? [link(listenerOf(position))] : [];
  const links: Link[] = [...listener, link(wears)];
  for (let part = wears; isFed(rig, part); ) {
    const { from, ends } = reachInto(rig, part);
    const wires = wiresBetween(rig, part);
    const next = [...wires, part];
    const out = ends.find((end) => next.includes(end.part) && end.into === from);
    links.push(...wires.map(link).reverse());
    links.push({ ...link(from), ...(out ? { socket: out.socket } : {}) });
    part = from;
  }
  return links.reverse();
}

/** Whether a place is a part, or one of its sockets. */
export const isAt = (part: string, place: string): boolean =>
  place === part || place.startsWith(`${part}, `);
