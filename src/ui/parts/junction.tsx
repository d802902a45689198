import type { Effect } from "#core/rig/effect.ts";
import { type Place, straightOn, sway } from "./direction.ts";
import { carriesSide, type EffectLanes, effectLanes, type Side, sides } from "./effect-lanes.ts";
import { Lane } from "./lane.tsx";

interface Shape {
  readonly at: Place;
  /** How far it reaches along the way. */
  readonly length: number;
  /** Of each lane from the middle between them. */
  readonly gap: number;
}

type Props = Shape & { readonly effect: Effect };

/** What a fault does to the two lanes, drawn where it is: a break, a cross, a join, a twist, or the return lost. */
export function Junction({ effect, ...shape }: Props) {
  const lanes = effectLanes[effect];
  return (
    <g>
      <Ties {...shape} lanes={lanes} />
      <Flag {...shape} />
    </g>
  );
}

function Ties({ lanes, ...shape }: Shape & { readonly lanes: EffectLanes }) {
  if (lanes.tie === "join" || lanes.tie === "minus" || lanes.tie === "tangle")
    return <Knot {...shape} tie={lanes.tie} />;
  if (lanes.tie === "twist") return <Twist {...shape} />;
  return <Ways {...shape} lanes={lanes} />;
}

const across = (side: Side, gap: number): number => (side === "left" ? -gap : gap);

/** Each side goes to the ears it reaches, and breaks off where it reaches none. */
function Ways({ at, length, gap, lanes }: Shape & { readonly lanes: EffectLanes }) {
  const reaches = (side: Side) => lanes.ears.some((carries) => carriesSide(carries, side));
  return (
    <>
      {sides.map((ear, index) =>
        lanes.ears[index] === "nothing" ? (
          <Lane
            key={ear}
            carries="nothing"
            d={straightOn(at, length * 0.66, length, across(ear, gap))}
          />
        ) : null,
      )}
      {sides.flatMap((side) =>
        sides
          .filter((_, index) => carriesSide(lanes.ears[index] ?? "nothing", side))
          .map((ear) => (
            <Lane
              key={`${side} ${ear}`}
              over
              carries={side}
              d={sway(at, [0, across(side, gap)], [length, across(ear, gap)])}
            />
          )),
      )}
      {sides
        .filter((side) => !reaches(side))
        .map((side) => (
          <Break key={side} at={at} length={length} gap={gap} side={side} />
        ))}
    </>
  );
}

/** The lane ends, and begins again as nothing. */
function Break({ at, length, gap, side }: Shape & { readonly side: Side }) {
  const t = across(side, gap);
  return (
    <>
      <Lane carries={side} d={straightOn(at, 0, length * 0.26, t)} />
      {[0.34, 0.56].map((part) => (
        <path
          key={part}
          class="bar"
          d={`M${at(length * part, t - 8)} L${at(length * part, t + 8)}`}
        />
      ))}
    </>
  );
}

/** What stands in the point that both lanes go through: a sum has none, a difference a minus, a tangle both. */
const signs = { join: "", minus: "M-6 0H6", tangle: "M-6 4H6M-6-3H6M0-9V3" } as const;

/** Both lanes go through one point, and what comes out is made of both. */
function Knot({ at, length, gap, tie }: Shape & { readonly tie: keyof typeof signs }) {
  const half = length / 2;
  return (
    <>
      {sides.map((side) => (
        <g key={side}>
          <Lane carries={side} d={sway(at, [0, across(side, gap)], [half, 0])} />
          <Lane carries="both" d={sway(at, [half, 0], [length, across(side, gap)])} />
        </g>
      ))}
      <g transform={`translate(${at(half, 0)})`}>
        <circle class={tie === "join" ? "knot" : "knot open"} r={tie === "join" ? gap * 0.8 : 13} />
        <path class="sign" d={signs[tie]} />
      </g>
    </>
  );
}

/** Half a turn and back: one side upside down, nobody can hear which. */
function Twist({ at, length, gap }: Shape) {
  const half = length / 2;
  const way = (from: number) =>
    `${sway(at, [0, from], [half, -from])} ${sway(at, [half, -from], [length, from]).replace(/^M\S+ \S+ /, "")}`;
  return (
    <>
      <Lane carries="right" d={way(gap)} />
      <Lane over carries="left" d={way(-gap)} />
    </>
  );
}

/** A flag of yellow tape round both lanes: look here. */
function Flag({ at, gap }: Shape) {
  const reach = gap + 14;
  const corners = [at(-21, -reach), at(-5, -reach + 4), at(-7, reach), at(-19, reach - 3)];
  return <path class="flag" d={`M${corners.join(" L")} Z`} />;
}
