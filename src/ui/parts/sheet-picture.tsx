import type { Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import { BoardPicture } from "./board-picture.tsx";
import { paperShape } from "./board-shape.ts";
import { fitting, textWidth } from "./letters.ts";
import type { TrunkTrouble } from "./trunk-picture.tsx";

interface Drawn {
  readonly id: string;
  readonly name: string;
  /** Nobody heard it. */
  readonly dim: boolean;
  readonly well: boolean;
  /** What is wrong behind the fan-out. */
  readonly effect?: Effect;
}

interface Props {
  readonly trunk: readonly Link[];
  readonly wrong: TrunkTrouble | undefined;
  readonly seats: readonly Drawn[];
}

/** Room for a tick at the end of each branch, and for a name, which takes more of it where it is long, but not too much of the picture. */
const tick = 24;
const room = { least: 108, most: 190 };
/** Of a name; as its style has it. */
const sizes = { usual: 11.5, tight: 9.5 };

/** The rig in ink: the board's own picture, low enough for a page, with each name where its lanes end. */
export function SheetPicture({ trunk, wrong, seats }: Props) {
  const shape = paperShape(trunk.length, seats.length);
  const { width, height, top, row } = shape;
  const tight = row < 20;
  const size = tight ? sizes.tight : sizes.usual;
  const longest = Math.max(...seats.map(({ name }) => size * textWidth(name)));
  const names = Math.min(room.most, Math.max(room.least, longest));
  return (
    <svg
      class={tight ? "sheet-rig tight" : "sheet-rig"}
      viewBox={`0 -16 ${width + tick + names} ${height + 32}`}
      aria-hidden="true"
    >
      <BoardPicture shape={shape} trunk={trunk} wrong={wrong} branches={seats} />
      {seats.map(({ id, name, well }, at) => {
        const y = top + (at + 0.5) * row;
        return (
          <g key={id}>
            {well && <path class="done" d={`M${width + 7} ${y}l4 4 7-9`} />}
            <text class="seat-name" x={width + tick} y={y + 4}>
              {fitting(name, names / size)}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
