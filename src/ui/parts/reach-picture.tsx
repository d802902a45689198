import type { Decibels } from "#core/units/units.ts";

interface Props {
  readonly hiss: Decibels;
  /** The loudest that is clean. */
  readonly most: Decibels;
  readonly wanted: Decibels;
}

/** From the softest to the loudest that is drawn, decibels of sound pressure. */
const [low, high]: readonly [Decibels, Decibels] = [-10, 130];
const [width, height] = [280, 26];
const along = (level: Decibels): number =>
  ((Math.min(high, Math.max(low, level)) - low) / (high - low)) * (width - 8) + 4;

/** Between hiss and the loudest that is clean, with the level that is wanted in it: a rough end and a hard one. */
export const ReachPicture = ({ hiss, most, wanted }: Props) => (
  <svg class="reach-picture" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
    <path class="reach" d={`M${along(hiss)} 13H${along(most)}`} />
    <path class="noise" d={teeth(along(hiss))} />
    <path class="ceiling" d={`M${along(most)} 3V23`} />
    <path class="wanted" d={`M${along(wanted)} 6v14`} />
  </svg>
);

const teeth = (x: number): string => `M${x} 4l3 3l-6 4l6 4l-6 4l3 3`;
