import { eastward, type Place, southward } from "./direction.ts";

/** How a chain is laid out: across a wide screen, or down a narrow one. */
export interface ChainShape {
  readonly wide: boolean;
  readonly at: Place;
  readonly slot: number;
  readonly gap: number;
  /** Of a fault's drawing. */
  readonly junction: number;
  readonly width: number;
  readonly height: number;
  readonly length: number;
}

/** The layout for so many links. Units are CSS pixels at full size. */
export function chainShape(wide: boolean, links: number): ChainShape {
  const slot = wide ? 150 : 46;
  const length = slot * links;
  const base = { wide, slot, length, gap: wide ? 13 : 11, junction: wide ? 62 : 38 };
  return wide
    ? { ...base, at: eastward(10, 84), width: length + 96, height: 160 }
    : { ...base, at: southward(60, 10), width: 330, height: length + 76 };
}
