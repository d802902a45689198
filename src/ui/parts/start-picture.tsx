import { eastward, straightOn, sway } from "./direction.ts";
import { Lane } from "./lane.tsx";

const at = eastward(0, 60);

/** Two lanes, straight on the left and crossed on the right; the tape that hides why lies over the middle. */
export const StartPicture = () => (
  <svg
    class="crossing"
    viewBox="0 0 1200 120"
    preserveAspectRatio="xMidYMid slice"
    aria-hidden="true"
  >
    <Lane carries="left" d={straightOn(at, 0, 470, -16)} />
    <Lane carries="right" d={straightOn(at, 0, 470, 16)} />
    <Lane carries="right" d={`${sway(at, [470, 16], [730, -16])} H1200`} />
    <Lane carries="left" d={`${sway(at, [470, -16], [730, 16])} H1200`} />
  </svg>
);
