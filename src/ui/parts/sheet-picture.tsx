import type { Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import { BoardPicture } from "./board-picture.tsx";
import { paperShape } from "./board-shape.ts";
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

/** Room for a name and a tick at the end of each branch. */
const names = 132;

/** The rig in ink: the board's own picture, low enough for a page, with each name where its lanes end. */
export function SheetPicture({ trunk, wrong, seats }: Props) {
  const shape = paperShape(trunk.length, seats.length);
  const { width, height, top, row } = shape;
  return (
    <svg
      class={row < 20 ? "sheet-rig tight" : "sheet-rig"}
      viewBox={`0 -16 ${width + names} ${height + 32}`}
      aria-hidden="true"
    >
      <BoardPicture shape={shape} trunk={trunk} wrong={wrong} branches={seats} />
      {seats.map(({ id, name, well }, at) => {
        const y = top + (at + 0.5) * row;
        return (
          <g key={id}>
            {well && <path class="done" d={`M${width + 7} ${y}l4 4 7-9`} />}
            <text class="seat-name" x={width + 24} y={y + 4}>
              {name}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
