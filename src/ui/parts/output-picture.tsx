import { southward, straightOn } from "./direction.ts";
import { Lane } from "./lane.tsx";

interface Props {
  /** The first channel of the pair, counted from nought. */
  readonly first: number;
  readonly used: boolean;
}

const at = southward(40, 0);

/** Two output sockets with their numbers; where the sound goes, a lane into each. */
export const OutputPicture = ({ first, used }: Props) => (
  <svg class="output-picture" viewBox="0 0 80 64" aria-hidden="true">
    <path class="case" d="M6 26H74V60H6Z" />
    {used && (
      <>
        <Lane carries="left" d={straightOn(at, 0, 34, -16)} />
        <Lane carries="right" d={straightOn(at, 0, 34, 16)} />
      </>
    )}
    {[0, 1].map((side) => (
      <g key={side}>
        <circle class="hole" cx={24 + 32 * side} cy="38" r="8" />
        <text x={24 + 32 * side} y="57">
          {first + side + 1}
        </text>
      </g>
    ))}
  </svg>
);
