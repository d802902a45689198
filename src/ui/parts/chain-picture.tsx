import type { VNode } from "preact";
import type { Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import { isBox } from "./chain-place.ts";
import { type ChainShape, chainShape } from "./chain-shape.ts";
import { straightOn, sway } from "./direction.ts";
import { type Carries, effectLanes, sides } from "./effect-lanes.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";
import { useWide } from "./use-wide.ts";

interface Props {
  readonly links: readonly Link[];
  /** What each link is called. */
  readonly nameOf: (link: Link) => string;
  /** What is wrong, and where in links from the start; left out for a chain with nothing wrong. */
  readonly wrong?: { readonly effect: Effect; readonly along: number };
  /** What is drawn over the lanes. */
  readonly over?: (shape: ChainShape) => VNode;
}

/** The way to one position as two lanes, with what is wrong drawn where it is. */
export function ChainPicture({ links, nameOf, wrong, over }: Props) {
  const shape = chainShape(useWide(62), links.length);
  const { at, length, gap, slot, junction, width, height } = shape;
  const ears = wrong === undefined ? effectLanes.straight.ears : effectLanes[wrong.effect].ears;
  const start = wrong === undefined ? length : wrong.along * slot - junction / 2;
  return (
    <svg
      class="chain"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
    >
      {links.map((link, index) => (
        <Station
          key={link.part}
          shape={shape}
          index={index}
          box={isBox(link)}
          name={nameOf(link)}
        />
      ))}
      {sides.map((side, ear) => (
        <g key={side}>
          <Lane carries={side} d={straightOn(at, 0, start, ear === 0 ? -gap : gap)} />
          {wrong !== undefined && (
            <Lane
              carries={ears[ear] ?? "nothing"}
              d={straightOn(at, start + junction, length, ear === 0 ? -gap : gap)}
            />
          )}
        </g>
      ))}
      {wrong !== undefined && (
        <Junction
          at={(along, across) => at(start + along, across)}
          length={junction}
          gap={gap}
          effect={wrong.effect}
        />
      )}
      <Cups shape={shape} ears={ears} />
      {over?.(shape)}
    </svg>
  );
}

interface StationProps {
  readonly shape: ChainShape;
  readonly index: number;
  readonly box: boolean;
  readonly name: string;
}

/** A box the lanes run through, or the name of a lead beside them. */
function Station({ shape: { at, slot, gap, wide }, index, box, name }: StationProps) {
  const [from, to] = [(index + 0.17) * slot, (index + 0.83) * slot];
  const edge = gap + (wide ? 17 : 13);
  const corners = [at(from, -edge), at(to, -edge), at(to, edge), at(from, edge)];
  const [x = 0, y = 0] = at((index + 0.5) * slot, edge)
    .split(" ")
    .map(Number);
  return (
    <>
      {box && <path class="box" d={`M${corners.join(" L")} Z`} />}
      <text
        class={box ? "part" : "part lead"}
        x={wide ? x : x + 12}
        y={wide ? y + 26 : y + 5}
        text-anchor={wide ? "middle" : "start"}
      >
        {name}
      </text>
    </>
  );
}

interface CupsProps {
  readonly shape: ChainShape;
  readonly ears: readonly [Carries, Carries];
}

/** The two ears at the end: left filled, right an outline. */
function Cups({ shape: { at, length, gap, wide }, ears }: CupsProps) {
  const [reach, apart, radius] = wide ? [54, 27, 20] : [40, 23, 17];
  return sides.map((side, ear) => {
    const away = ear === 0 ? -1 : 1;
    return (
      <g key={side}>
        <Lane
          carries={ears[ear] ?? "nothing"}
          d={sway(at, [length, away * gap], [length + reach, away * apart])}
        />
        <g transform={`translate(${at(length + reach, away * apart)})`}>
          <circle class={`cup ${side}`} r={radius} />
          <text class={`letter ${side}`} y="6" text-anchor="middle">
            {side === "left" ? "L" : "R"}
          </text>
        </g>
      </g>
    );
  });
}
