import type { Effect } from "#core/rig/effect.ts";
import { eastward, straightOn } from "./direction.ts";
import { effectLanes, sides } from "./effect-lanes.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";

const [width, middle, gap, from, to] = [124, 26, 9, 34, 86];
const at = eastward(0, middle);

/** What something does to the two lanes, small: left above, right below. */
export function EffectGlyph({ effect }: { readonly effect: Effect }) {
  const after = effectLanes[effect].ears;
  return (
    <svg class="effect-glyph" viewBox={`0 0 ${width} ${2 * middle}`} aria-hidden="true">
      {sides.map((side, ear) => {
        const across = ear === 0 ? -gap : gap;
        const carries = after[ear] ?? "nothing";
        return (
          <g key={side}>
            <Lane carries={side} d={straightOn(at, 0, from, across)} />
            {effect === "straight" && <Lane carries={side} d={straightOn(at, from, to, across)} />}
            <Lane carries={carries} d={straightOn(at, to, width, across)} />
          </g>
        );
      })}
      {effect !== "straight" && (
        <Junction
          at={(along, across) => at(from + along, across)}
          length={to - from}
          gap={gap}
          effect={effect}
        />
      )}
    </svg>
  );
}
