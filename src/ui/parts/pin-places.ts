import type { Contact } from "#core/parts/plugs.ts";
import { isSignal } from "./content.ts";
import { type Layout, type PinRow, rowsOf } from "./pin-ends.tsx";
import type { PinEnd, Spelled } from "./pins.ts";

/** A contact of one end of a lead. */
export interface Pin {
  readonly end: string;
  readonly contact: Contact;
}

/** A contact from its name in a circuit, `plug.contact`. */
export function pinOf(node: string): Pin {
  const at = node.lastIndexOf(".");
  return { end: node.slice(0, at), contact: node.slice(at + 1) as Contact };
}

/** Nothing but a return. */
export const isReturn = (node: string): boolean => !isSignal(pinOf(node).contact);

/** Where in a drawing a contact has its dot, and its plug. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly west: boolean;
  readonly end: PinEnd;
  /** The middle of its plug. */
  readonly middle: number;
}

/** The rows of both sides, and where each contact is. */
export interface Places {
  readonly west: readonly PinRow[];
  readonly east: readonly PinRow[];
  readonly foot: number;
  /** Throws on a contact that the lead has not. */
  readonly at: (node: string) => Place;
}

export function placesOf(spelled: Spelled, { width, dot }: Layout): Places {
  const [west, east] = [rowsOf(spelled.west), rowsOf(spelled.east)];
  const at = (node: string): Place => {
    const pin = pinOf(node);
    const isThere = ({ end, contact }: PinRow) => end.name === pin.end && contact === pin.contact;
    const here = west.find(isThere);
    const row = here ?? east.find(isThere);
    if (row === undefined) throw new RangeError(`the lead has no ${node}`);
    const own = [...west, ...east].filter(({ end }) => end === row.end);
    const middle = ((own[0]?.y ?? 0) + (own.at(-1)?.y ?? 0)) / 2;
    return {
      x: here ? dot : width - dot,
      y: row.y,
      west: here !== undefined,
      end: row.end,
      middle,
    };
  };
  return { west, east, foot: Math.max(...[...west, ...east].map(({ y }) => y), 80), at };
}
