import type { Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { BoardShape, BranchShape } from "./board-shape.ts";
import { straightOn } from "./direction.ts";
import { type Carries, effectLanes, sides } from "./effect-lanes.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";
import { Trunk, type TrunkTrouble } from "./trunk-picture.tsx";

interface Branch {
  readonly dim: boolean;
  /** What is wrong behind the fan-out. */
  readonly effect?: Effect;
}

interface Props {
  readonly shape: BoardShape;
  readonly trunk: readonly Link[];
  readonly wrong?: TrunkTrouble | undefined;
  readonly branches: readonly Branch[];
}

/** The rig as two lanes, from the source out to every position. */
export function BoardPicture({ shape, trunk, wrong, branches }: Props) {
  const after = effectLanes[wrong?.effect ?? "straight"].ears;
  return (
    <svg
      class="lanes"
      viewBox={`0 0 ${shape.width} ${shape.height}`}
      width={shape.width}
      height={shape.height}
      aria-hidden="true"
    >
      {branches.map((branch, index) => {
        const place = shape.branches[index];
        return (
          place && (
            <BranchLanes
              key={place.fan[0]}
              place={place}
              gap={shape.gap}
              branch={branch}
              carries={after}
            />
          )
        );
      })}
      <Trunk shape={shape} links={trunk} wrong={wrong} />
    </svg>
  );
}

interface BranchProps {
  readonly place: BranchShape;
  readonly gap: number;
  readonly branch: Branch;
  readonly carries: readonly [Carries, Carries];
}

const junction = 52;

function BranchLanes({
  place: { fan, at, run },
  gap,
  branch: { dim, effect },
  carries,
}: BranchProps) {
  const behind = effect === undefined ? carries : effectLanes[effect].ears;
  const start = effect === undefined ? run : (run - junction) / 2 + 6;
  return (
    <g class={dim ? "branch dim" : "branch"}>
      {sides.map((side, ear) => {
        const t = ear === 0 ? -gap : gap;
        const content = carries[ear] ?? "nothing";
        return (
          <g key={side}>
            <Lane carries={content} d={fan[ear] ?? ""} />
            <Lane carries={content} d={straightOn(at, 0, start, t)} />
            {effect && (
              <Lane
                carries={behind[ear] ?? "nothing"}
                d={straightOn(at, start + junction, run, t)}
              />
            )}
          </g>
        );
      })}
      {effect && (
        <Junction
          at={(along, t) => at(start + along, t)}
          length={junction}
          gap={gap}
          effect={effect}
        />
      )}
    </g>
  );
}
