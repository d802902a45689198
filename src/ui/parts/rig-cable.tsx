import type { PlugKind } from "#core/parts/plugs.ts";

/** How far apart plugs stand in a picture of a rig, and how wide a cable is drawn between them, in CSS pixels. */
const [row, width, gap] = [46, 88, 4];

interface Props {
  /** The plugs at each end. */
  readonly near: readonly PlugKind[];
  readonly far: readonly PlugKind[];
}

const middleOf = (count: number, rows: number): number => (rows * row) / 2 + (count * row) / 2;

/** Where each plug of an end lies, and which lanes it has: two of them are left and right, one stereo plug has both. */
function lanesAt(plugs: readonly PlugKind[], rows: number) {
  const top = middleOf(0, rows) - (plugs.length * row) / 2;
  const at = (index: number) => top + (index + 0.5) * row;
  const [first] = plugs;
  if (plugs.length === 2) return { left: at(0), right: at(1), other: [] };
  if (plugs.length === 1 && (first === "TRS" || first === "TRRS" || first === "link"))
    return { left: at(0) - gap, right: at(0) + gap, other: [] };
  return { left: undefined, right: undefined, other: plugs.map((_, index) => at(index)) };
}

/** A cable from the plugs at one end to those at the other: its two lanes, or a bare cord where it carries one signal. */
export function RigCable({ near, far }: Props) {
  const rows = Math.max(near.length, far.length, 1);
  const height = rows * row;
  const [from, to] = [lanesAt(near, rows), lanesAt(far.length > 0 ? far : near, rows)];
  const middle = height / 2;
  const lane = (side: "left" | "right") => {
    const [a, b] = [from[side], to[side]];
    if (a === undefined || b === undefined) return undefined;
    const m = middle + (side === "left" ? -gap : gap);
    return `M0 ${a}C${width * 0.3} ${a} ${width * 0.2} ${m} ${width / 2} ${m}S${width * 0.7} ${b} ${width} ${b}`;
  };
  const [left, right] = [lane("left"), lane("right")];
  return (
    <svg
      class="rig-cable"
      viewBox={`0 0 ${width} ${height}`}
      style={{ height: `${height}px` }}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      {left && right ? (
        <>
          <path class="lane left" d={left} />
          <path class="lane right" d={right} />
          <path class="lane core" d={right} />
        </>
      ) : (
        <Cords from={from} to={to} middle={middle} />
      )}
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
