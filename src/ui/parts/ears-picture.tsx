import { useWords } from "#ui/words/use-words.ts";
import type { Shown } from "./content.ts";
import { straightOn } from "./direction.ts";
import { brief } from "./ear-text.ts";
import { sides } from "./effect-lanes.ts";
import { Lane } from "./lane.tsx";
import type { PlanShape } from "./plan-shape.ts";

interface Props {
  readonly shape: PlanShape;
  readonly ears: readonly [Shown, Shown];
}

const plain = (x: number, y: number) => (along: number, across: number) =>
  `${x + along} ${y + across}`;

/** The two ears at the end with what each gets, and the lanes to them from the box before them. */
export function Ears({ shape: { cups, into, wide }, ears }: Props) {
  const words = useWords();
  const radius = wide ? 25 : 21;
  return sides.map((side, ear) => {
    const [x, y] = cups[ear === 0 ? 0 : 1];
    const gets = ears[ear === 0 ? 0 : 1];
    const edge = into && into.x + into.width;
    const away = ear === 0 ? -(radius + 12) : radius + 25;
    return (
      <g key={side}>
        {edge !== undefined && (
          <Lane carries={gets.carries} d={straightOn(plain(0, y), edge, x - radius, 0)} />
        )}
        <circle class={`cup ${side}`} cx={x} cy={y} r={radius} />
        <text class={`letter ${side}`} x={x} y={y + 6} text-anchor="middle">
          {side === "left" ? "L" : "R"}
        </text>
        <text class="gets" x={x} y={y + away} text-anchor="middle">
          {brief(words, gets)}
        </text>
      </g>
    );
  });
}
