import type { State } from "#core/session/derive.ts";
import { Lane } from "./lane.tsx";

interface Props {
  /** How each position stands, in order. */
  readonly states: readonly State[];
}

/** More are drawn as so many. */
const most = 8;
const [width, height, fork] = [132, 60, 46];

/** A rig as small as a stamp: two lanes in, and a pair out to each position, with what stands at its end. */
export function SessionPicture({ states }: Props) {
  const drawn = states.length > most ? shortened(states) : states;
  const step = (height - 12) / drawn.length;
  return (
    <svg class="session-picture" viewBox={`0 0 ${width} ${height}`} aria-hidden="true">
      {drawn.map((state, at) => {
        const y = 6 + step * (at + 0.5);
        return (
          <g key={y} class={state === "not heard" || state === "absent" ? "dim" : ""}>
            <Lane carries="left" d={branch(y - 1.6, -1.6)} />
            <Lane carries="right" d={branch(y + 1.6, 1.6)} />
            <Ending state={state} y={y} />
          </g>
        );
      })}
      <Lane carries="left" d={`M2 ${height / 2 - 1.6}H${fork / 2}`} />
      <Lane carries="right" d={`M2 ${height / 2 + 1.6}H${fork / 2}`} />
    </svg>
  );
}

const branch = (y: number, across: number): string => {
  const from = height / 2 + across;
  return `M${fork / 2} ${from}C${fork} ${from} ${fork} ${y} ${fork * 1.6} ${y}H${width - 26}`;
};

/** A tick where it is well, a break where it is wrong, an open end where nobody knows. */
function Ending({ state, y }: { readonly state: State; readonly y: number }) {
  const x = width - 20;
  if (state === "healthy") return <path class="well" d={`M${x} ${y}l4 4l8-8`} />;
  if (state === "wrong" || state === "unsure")
    return <path class="look-here" d={`M${x} ${y - 5}v10M${x + 6} ${y - 5}v10`} />;
  return null;
}

/** As many as there is room for, of each state its share, what is wrong first. */
function shortened(states: readonly State[]): readonly State[] {
  const order: readonly State[] = ["wrong", "unsure", "healthy", "begun", "not heard", "absent"];
  const sorted = order.flatMap((state) => states.filter((one) => one === state));
  const wrong = sorted.filter((one) => one === "wrong" || one === "unsure").slice(0, most / 2);
  const rest = sorted.slice(sorted.filter((one) => one === "wrong" || one === "unsure").length);
  const room = most - wrong.length;
  return [
    ...wrong,
    ...Array.from({ length: room }, (_, at) => rest[Math.floor((at * rest.length) / room)]).filter(
      (one) => one !== undefined,
    ),
  ];
}
