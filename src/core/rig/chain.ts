import type { PartKind } from "#core/parts/part.ts";
import { type BuiltRig, listenerOf } from "./rig.ts";
import { cordsInto, stretchInto } from "./stretch.ts";

/** One thing on the way to a position, as a picture shows it. */
export interface Link {
  readonly part: string;
  readonly kind: PartKind;
  /** The socket the way leaves a box by, where it does. */
  readonly socket?: string;
}

/** What stands between the source and a position's ears, in order, the listener last. */
export function chainTo(rig: BuiltRig, position: string): readonly Link[] {
  const wears = rig.positions.find(({ id }) => id === position)?.wears;
  if (wears === undefined) throw new Error(`the rig has no position named ${position}`);
  const links: Link[] = [{ part: listenerOf(position), kind: "listener" }];
  for (let part: string | undefined = wears; part !== undefined; ) {
    const cords = cordsInto(rig, part);
    if (cords.length === 0) break;
    links.push(...cords.map((id) => ({ part: id, kind: rig.part(id).kind })));
    const from: string = stretchInto(rig, part, []).from;
    const out = rig.plugged.find((end) => cords.includes(end.part) && end.into === from);
    links.push({ part: from, kind: rig.part(from).kind, ...(out ? { socket: out.socket } : {}) });
    part = from;
  }
  return links.reverse();
}
