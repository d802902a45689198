import { eastward, type Place, southward, westward } from "./direction.ts";

/** One position's lanes on the board: the fan as a path for each lane, and the straight run to its tape. */
export interface BranchShape {
  readonly fan: readonly [left: string, right: string];
  readonly at: Place;
  readonly run: number;
}

/** Where everything of the board lies, in CSS pixels. */
export interface BoardShape {
  readonly wide: boolean;
  readonly width: number;
  readonly height: number;
  readonly gap: number;
  readonly slot: number;
  readonly trunk: { readonly at: Place; readonly length: number; readonly reach: number };
  readonly branches: readonly BranchShape[];
  /** Height of a position's row, and how far down the first begins. */
  readonly row: number;
  readonly top: number;
}

/**
 * Across a wide screen the trunk comes from the left and fans out; on a narrow one it comes down and peels off. Where letters are larger
 * by some scale the rows are higher.
 */
export const boardShape = (
  wide: boolean,
  links: number,
  positions: number,
  letters = 1,
): BoardShape =>
  wide
    ? across(links, positions, { ...onScreen, row: onScreen.row * letters })
    : down(links, positions, letters);

/** On paper all of it is so wide as a page between its margins, and a row lower the more there are: 64 still fit on one. */
export function paperShape(links: number, positions: number): BoardShape {
  const row = Math.min(34, Math.max(11.5, 250 / positions));
  const slot = Math.min(96, 340 / Math.max(1, links));
  const spread = Math.min(16, row * 0.6);
  return across(links, positions, {
    row,
    slot,
    gap: row < 20 ? 2 : 4,
    fan: 120,
    run: 84,
    spread,
    least: 110,
  });
}

/** The measures of a board whose trunk comes from the left. */
interface Measures {
  readonly row: number;
  /** Of one link of the trunk. */
  readonly slot: number;
  readonly gap: number;
  readonly fan: number;
  readonly run: number;
  /** From one position's lanes to the next where they part. */
  readonly spread: number;
  /** The least height. */
  readonly least: number;
}

const onScreen: Measures = {
  row: 88,
  slot: 108,
  gap: 7,
  fan: 170,
  run: 112,
  spread: 24,
  least: 220,
};
const spreadDown = 17;

function across(links: number, positions: number, measures = onScreen): BoardShape {
  const { row, slot, gap, fan, run, spread, least } = measures;
  const height = Math.max(positions * row, least);
  const top = (height - positions * row) / 2;
  const length = links * slot;
  const branches = Array.from({ length: positions }, (_, index): BranchShape => {
    const from = height / 2 + (index - (positions - 1) / 2) * spread;
    const to = top + (index + 0.5) * row;
    const lane = (t: number) => {
      const [x, far] = [10 + length, 10 + length + fan];
      const bend = t * (to < from ? 0.55 : -0.55);
      return `M${x} ${from + t} C${x + fan * 0.55 + bend} ${from + t} ${x + fan * 0.45 + bend} ${to + t} ${far} ${to + t}`;
    };
    return { fan: [lane(-gap), lane(gap)], at: eastward(10 + length + fan, to), run };
  });
  return {
    wide: true,
    width: 10 + length + fan + run,
    height,
    gap,
    slot,
    trunk: { at: eastward(10, height / 2), length, reach: (positions * spread) / 2 + 8 },
    branches,
    row,
    top,
  };
}

function down(links: number, positions: number, letters: number): BoardShape {
  const [row, slot, gap, bend] = [112 * letters, 46, 5, 26];
  // As wide as its lanes need, since the names stand beside it.
  const width = Math.max(104, 24 + (positions - 1) * spreadDown + bend + 24);
  const length = links * slot;
  const top = length + 30;
  const first = width - 24 - (positions - 1) * spreadDown;
  const middle = first + ((positions - 1) * spreadDown) / 2;
  const branches = Array.from({ length: positions }, (_, index): BranchShape => {
    const x = first + index * spreadDown;
    const y = top + (index + 0.5) * row;
    const lane = (t: number) => {
      const turn = bend + t;
      return `M${x + t} ${length + 26} V${y + t - turn} Q${x + t} ${y + t} ${x + t - turn} ${y + t} H${first - bend - 10}`;
    };
    return {
      fan: [lane(-gap), lane(gap)],
      at: westward(first - bend - 10, y),
      run: first - bend - 10,
    };
  });
  return {
    wide: false,
    width,
    height: top + positions * row,
    gap,
    slot,
    trunk: { at: southward(middle, 26), length, reach: (positions * spreadDown) / 2 + 8 },
    branches,
    row,
    top,
  };
}
