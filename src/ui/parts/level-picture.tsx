import { levelCap, levelFloor, startLevel } from "#core/signals/caps.ts";
import type { DecibelsFullScale } from "#core/units/units.ts";

interface Props {
  readonly level: DecibelsFullScale;
  readonly muted: boolean;
}

const [width, height] = [200, 26];
const left = 4;
const along = (level: DecibelsFullScale): number =>
  left + ((level - levelFloor) / (levelCap - levelFloor)) * (width - 2 * left);

/** A wedge from the least level to the limit: how much of it is used, and where it starts. */
export const LevelPicture = ({ level, muted }: Props) => (
  <svg
    class={muted ? "level-picture muted" : "level-picture"}
    viewBox={`0 0 ${width} ${height}`}
    aria-hidden="true"
  >
    <path class="wedge" d={wedge(levelCap)} />
    <path class="used" d={wedge(level)} />
    <path class="start" d={`M${along(startLevel)} ${height}V${height - 5}`} />
    <path class="limit" d={`M${along(levelCap)} 1V${height}`} />
    <circle class="knob" cx={along(level)} cy={top(level)} r="4" />
  </svg>
);

/** The upper edge of the wedge at a level. */
const top = (level: DecibelsFullScale): number =>
  height - 6 - ((level - levelFloor) / (levelCap - levelFloor)) * (height - 12);

const wedge = (to: DecibelsFullScale): string =>
  `M${left} ${height - 6}L${along(to)} ${top(to)}V${height - 6}Z`;
