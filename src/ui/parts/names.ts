import { listenerOf, operatorId, type Rig } from "#core/rig/rig.ts";

/** A position by what stands on its tape. */
export const seatName = (rig: Rig, position: string): string =>
  rig.positions.find(({ id }) => id === position)?.name ?? position;

/** A place as it is said: a part, a socket of a box, or who sits at a position. */
export function placeName(rig: Rig, place: string): string {
  if (place === operatorId) return "whoever writes the answers down";
  if (rig.positions.length > 1 && place === rig.positions.map(({ id }) => id).join(", "))
    return "what all share";
  const seat = rig.positions.find(({ id }) => listenerOf(id) === place || id === place);
  return seat?.name ?? (place.startsWith("headphones") ? place : `the ${place}`);
}
