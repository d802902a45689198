import type { PlugKind } from "#core/parts/plugs.ts";

/** How wide a cable is drawn, and how far its lanes lie from its middle, in CSS pixels. */
const [width, gap] = [88, 4];

interface Props {
  /** The plugs at each end. */
  readonly near: readonly PlugKind[];
  readonly far: readonly PlugKind[];
  /** How far apart the plugs stand, in CSS pixels. */
  readonly row: number;
  /** From the top down rather than from left to right. */
  readonly down?: boolean;
}

/** Where each plug of an end lies, and which lanes it has: two of them are left and right, one stereo plug has both. */
function lanesAt(plugs: readonly PlugKind[], rows: number, row: number) {
  const top = ((rows - plugs.length) * row) / 2;
  const at = (index: number) => top + (index + 0.5) * row;
  const [first] = plugs;
  if (plugs.length === 2) return { left: at(0), right: at(1), other: [] };
  if (plugs.length === 1 && (first === "TRS" || first === "TRRS" || first === "link"))
    return { left: at(0) - gap, right: at(0) + gap, other: [] };
  return { left: undefined, right: undefined, other: plugs.map((_, index) => at(index)) };
}

/** A cable from the plugs at one end to those at the other: its two lanes, or a bare cord where it carries one signal. */
export function RigCable({ near, far, row, down = false }: Props) {
  const rows = Math.max(near.length, far.length, 1);
  const height = rows * row;
  const [from, to] = [near, far.length > 0 ? far : near].map((plugs) =>
    lanesAt(plugs, rows, row),
  ) as [Ends, Ends];
  const middle = height / 2;
  const lane = (side: "left" | "right") => {
    const [a, b] = [from[side], to[side]];
    if (a === undefined || b === undefined) return undefined;
    const together = middle + (side === "left" ? -gap : gap);
    const m = near.length === far.length ? a : together;
    return `M0 ${a}C${width * 0.3} ${a} ${width * 0.2} ${m} ${width / 2} ${m}S${width * 0.7} ${b} ${width} ${b}`;
  };
  const [left, right] = [lane("left"), lane("right")];
  return (
    <svg
      class="rig-cable"
      viewBox={down ? `0 0 ${height} ${width}` : `0 0 ${width} ${height}`}
      style={{ [down ? "width" : "height"]: `${height}px` }}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <g {...(down && { transform: "matrix(0 1 1 0 0 0)" })}>
        {left && right ? (
          <>
            <path class="lane left" d={left} />
            <path class="lane right" d={right} />
            <path class="lane core" d={right} />
          </>
        ) : (
          <Cords from={from} to={to} middle={middle} />
        )}
      </g>
    </svg>
  );
}

type Ends = ReturnType<typeof lanesAt>;

const all = ({ left, right, other }: Ends): readonly number[] =>
  left !== undefined && right !== undefined ? [(left + right) / 2] : other;

/** One signal, or what is not known to be two. */
const Cords = ({
  from,
  to,
  middle,
}: {
  readonly from: Ends;
  readonly to: Ends;
  readonly middle: number;
}) => (
  <>
    {all(from).map((y) => (
      <path key={`n${y}`} class="cord" d={`M0 ${y}Q${width / 4} ${y} ${width / 2} ${middle}`} />
    ))}
    {all(to).map((y) => (
      <path
        key={`f${y}`}
        class="cord"
        d={`M${width / 2} ${middle}Q${(width * 3) / 4} ${y} ${width} ${y}`}
      />
    ))}
  </>
);
