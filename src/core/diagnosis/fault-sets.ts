import { setsOf } from "#core/inference/sets.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Life } from "./course.ts";

/** At most so many faults that may be there together, with how likely that is against none of them. */
export interface FaultSet {
  readonly lives: readonly Life[];
  /** Odds against the empty set. */
  readonly weight: number;
}

/** Odds that no fault on the list is the cause, in 10,000. Common practice, no source. */
const unlistedWeight = 100;

/** 'Something not on the list', in what some positions share. */
export const unlisted = (positions: readonly string[]): RigFault => ({
  id: `${positions.join(", ")} / something not on the list`,
  name: "something not on the list",
  part: positions.join(", "),
  place: positions.join(", "),
  at: "",
  edits: [],
  weight: unlistedWeight,
  slot: "",
  seen: false,
  repair: 300,
});

export const isUnlisted = ({ name }: RigFault): boolean => name === "something not on the list";

/** No fault, each life of one, each two that can both have been. What is not on the list stands alone. */
export const faultSets = (lives: readonly Life[], most: number): readonly FaultSet[] =>
  setsOf(lives, most, together).map((some) => ({
    lives: some,
    weight: some.reduce((product, { odds }) => product * odds, 1),
  }));

/** One plug has one depth; but one of two that exclude each other may come when the other is gone. */
function together(a: Life, b: Life): boolean {
  if (isUnlisted(a.fault) || isUnlisted(b.fault)) return false;
  const apart = a.until <= b.from || b.until <= a.from;
  return apart || a.fault.part !== b.fault.part || a.fault.slot !== b.fault.slot;
}
