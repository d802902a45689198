import { type Content, type Shown, shown, silent, sum } from "./content.ts";
import { carriesSide, type Side, sides } from "./effect-lanes.ts";
import type { Mouth, Start, Wired } from "./wired.ts";

/** A lane into the straight run: what it carries, and whether it arrives anywhere. */
export interface StartLane {
  readonly start: Start;
  readonly shown: Shown;
  /** Beside the middle of the cable. */
  readonly across: number;
  readonly lost: boolean;
}

/** A lane out of it, made of some of those that go in. */
export interface MouthLane {
  readonly mouth: Mouth;
  readonly content: Content;
  readonly shown: Shown;
  readonly across: number;
  readonly from: readonly StartLane[];
}

/** What runs in the cable. */
export interface CableLanes {
  readonly starts: readonly StartLane[];
  readonly mouths: readonly MouthLane[];
}

/**
 * The lanes of a cable, from the contacts they leave by to those they arrive at. What leaves and arrives nowhere is shown where a
 * side is lost by it; else a contact that is left alone on purpose would look like a fault.
 */
export function cableLanes({ starts, mouths }: Wired, gap: number): CableLanes {
  const contents = mouths.map((_, index) =>
    sum(starts.filter(({ to }) => to.includes(index)).map(({ content }) => content)),
  );
  const arrives = (side: Side) => contents.some((one) => carriesSide(shown(one).carries, side));
  const lost = sides.filter((side) => !arrives(side));
  const seen = starts.filter(
    ({ to, content }) =>
      to.length > 0 || lost.some((side) => carriesSide(shown(content).carries, side)),
  );
  const lanes = seen.map((start, index) => ({
    start,
    shown: shown(start.content),
    across: slot(index, seen.length, gap),
    lost: start.to.length === 0,
  }));
  return {
    starts: lanes,
    mouths: mouths.map((mouth, index) => {
      const content = contents[index] ?? silent;
      return {
        mouth,
        content,
        shown: shown(content),
        across: slot(index, mouths.length, gap),
        from: lanes.filter(({ start }) => start.to.includes(index)),
      };
    }),
  };
}

/** Side by side around the middle. */
const slot = (index: number, count: number, gap: number): number => (2 * index - (count - 1)) * gap;
