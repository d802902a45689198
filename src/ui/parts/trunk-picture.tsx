import type { Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { BoardShape } from "./board-shape.ts";
import { isBox } from "./chain-place.ts";
import { straightOn } from "./direction.ts";
import { effectLanes, sides } from "./effect-lanes.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";

/** What is wrong on the trunk, and where in links from its start. */
export interface TrunkTrouble {
  readonly effect: Effect;
  readonly along: number;
}

interface Props {
  readonly shape: BoardShape;
  readonly links: readonly Link[];
  readonly wrong?: TrunkTrouble | undefined;
}

/** At full length on a wide screen. */
const junction = 52;

/** What all positions share: boxes and leads, and the two lanes through them. */

export function Trunk({ shape, links, wrong }: Props) {
  const { trunk, gap, slot, wide } = shape;
  const length = Math.min(junction, slot * 0.7);
  const end = isBox(links.at(-1)) ? trunk.length - slot * 0.7 : trunk.length;
  const start = wrong === undefined ? end : wrong.along * slot - length / 2;
  const after = effectLanes[wrong?.effect ?? "straight"].ears;
  return (
    <>
      {links.map((link, index) => (
        <Box
          key={link.part}
          shape={shape}
          link={link}
          index={index}
          last={index === links.length - 1}
        />
      ))}
      {sides.map((side, ear) => (
        <g key={side}>
          <Lane carries={side} d={straightOn(trunk.at, 0, start, ear === 0 ? -gap : gap)} />
          {wrong && (
            <Lane
              carries={after[ear] ?? "nothing"}
              d={straightOn(
                trunk.at,
                start + length,
                Math.max(end, start + length),
                ear === 0 ? -gap : gap,
              )}
            />
          )}
          <SideLetter
            at={trunk.at(wide ? 4 : -20, ear === 0 ? -gap : gap)}
            side={side}
            wide={wide}
          />
        </g>
      ))}
      {wrong && (
        <Junction
          at={(along, t) => trunk.at(start + along, t)}
          length={length}
          gap={gap}
          effect={wrong.effect}
        />
      )}
    </>
  );
}

const letters = { left: "L", right: "R" } as const;

function SideLetter({
  at,
  side,
  wide,
}: {
  readonly at: string;
  readonly side: "left" | "right";
  readonly wide: boolean;
}) {
  const [x = 0, y = 0] = at.split(" ").map(Number);
  const away = side === "left" ? -1 : 1;
  return (
    <text
      class={`letter ${side}`}
      x={wide ? x : x + away * 12}
      y={wide ? y + 5 + away * 15 : y + 14}
      text-anchor="middle"
    >
      {letters[side]}
    </text>
  );
}

interface BoxProps {
  readonly shape: BoardShape;
  readonly link: Link;
  readonly index: number;
  readonly last: boolean;
}

/** A box on the trunk with its name; a lead has its name alone. The last box is as wide as what fans out of it. */
function Box({ shape: { trunk, slot, gap, wide }, link, index, last }: BoxProps) {
  const { names } = useWords().language;
  const edge = last && isBox(link) ? Math.max(trunk.reach, gap + 16) : gap + 16;
  const [from, to] = [(index + 0.12) * slot, last ? trunk.length + 2 : (index + 0.88) * slot];
  const corners = [
    trunk.at(from, -edge),
    trunk.at(to, -edge),
    trunk.at(to, edge),
    trunk.at(from, edge),
  ];
  const [x = 0, y = 0] = trunk
    .at((index + 0.5) * slot, -edge)
    .split(" ")
    .map(Number);
  return (
    <>
      {isBox(link) && <path class="box" d={`M${corners.join(" L")} Z`} />}
      <text
        class={isBox(link) ? "part" : "part lead"}
        x={wide ? x : x - 14}
        y={wide ? y - 10 : y + 5}
        text-anchor={wide ? "middle" : "end"}
      >
        {names.alone(link.part)}
      </text>
    </>
  );
}
