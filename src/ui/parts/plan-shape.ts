import type { Place } from "./direction.ts";
import { planAcross } from "./plan-shape-across.ts";
import { planDown } from "./plan-shape-down.ts";

export type Point = readonly [x: number, y: number];

/** A box with its sockets along one edge. */
export interface BoxShape {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly sockets: readonly Point[];
}

/** Where everything lies between what somebody has and the ears, in units of the drawing. */
export interface PlanShape {
  readonly wide: boolean;
  readonly width: number;
  readonly height: number;
  /** How large plugs are drawn. */
  readonly scale: number;
  readonly from: BoxShape;
  /** Left out where headphones go straight in. */
  readonly into?: BoxShape;
  /** Where the cable runs straight, and how long: in it the conductors part and join. The right lane's side is positive. */
  readonly middle: { readonly at: Place; readonly length: number };
  /** From the end of a plug at the box into the straight run, `across` it. */
  readonly near: (end: Point, across: number) => string;
  /** Out of the straight run to a plug or a cup. */
  readonly far: (end: Point, across: number) => string;
  /** The tip of a plug in front of a socket, and the end that its cable leaves by. */
  readonly plugAt: (socket: Point, facing: "west" | "east") => PlugPlace;
  /** Adapters in the cable: the middle of the first, and from one to the next. */
  readonly adapters: { readonly near: Point; readonly far: Point; readonly step: number };
  /** Beside the straight run: what the lead is called. */
  readonly leadName: Point;
  readonly cups: readonly [left: Point, right: Point];
  /** The middles of the tapes of what it goes into and of what is worn at that. */
  readonly intoName: Point;
  readonly wornName: Point;
}

export interface PlugPlace {
  readonly tip: Point;
  readonly end: Point;
}

/** What the layout depends on. */
export interface PlanCounts {
  readonly outputs: number;
  /** None where headphones go straight in. */
  readonly inputs: number;
  /** The outputs in use, by their rows. */
  readonly used: readonly number[];
  readonly nearAdapters: number;
  readonly farAdapters: number;
}

/** Across a wide screen; on a narrow one down it, in an S so that left stays left. */
export const planShape = (wide: boolean, counts: PlanCounts): PlanShape =>
  wide ? planAcross(counts) : planDown(counts);
