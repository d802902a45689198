import type { Decibels } from "#core/units/units.ts";
import { eastward, straightOn, sway } from "./direction.ts";
import { Lane } from "./lane.tsx";

/** One programme at one input. */
interface MeasuredEntry {
  readonly level: Decibels;
  readonly carried: boolean;
  readonly polarity: 1 | -1 | undefined;
}

interface Props {
  /** `entries[input][programme]`, left first. */
  readonly entries: readonly (readonly MeasuredEntry[])[];
  /** All of it in words. */
  readonly label: string;
}

const at = eastward(0, 0);
const across = [46, 114] as const;
const [from, apart, back, to] = [64, 140, 280, 356];
const sides = ["left", "right"] as const;
/** A whole side is so wide, pixels; and so far down there is next to nothing of it. */
const [whole, faintest] = [11, -60];

/** By the root of the gain: a quarter is half as wide, a hundredth a tenth. */
const widthOf = (level: Decibels): number =>
  Math.min(whole * 1.3, Math.max(1.4, whole * 10 ** (level / 40)));

/** What comes back of each side, and where: lanes as wide as it is loud, a break where nothing comes, a minus where it is upside down. */
export const MeasuredPicture = ({ entries, label }: Props) => (
  <svg class="measured-picture" viewBox="0 0 420 160" role="img" aria-label={label}>
    {sides.map((side, programme) => (
      <g key={side}>
        <text class={`letter ${side}`} x="36" y={(across[programme] ?? 0) + 7}>
          {side === "left" ? "L" : "R"}
        </text>
        <Lane carries={side} d={straightOn(at, from, apart, across[programme] ?? 0)} />
      </g>
    ))}
    {entries.map((_, input) => (
      // biome-ignore lint/suspicious/noArrayIndexKey: an input is its number
      <g key={input}>
        <circle class="hole" cx={to + 14} cy={across[input] ?? 0} r="13" />
        <text class="number" x={to + 14} y={(across[input] ?? 0) + 6}>
          {input + 1}
        </text>
      </g>
    ))}
    {inOrder(entries).map((way) => (
      <Way key={`${way.input} ${way.programme}`} {...way} />
    ))}
    {inOrder(entries).map((way) => (
      <Sign key={`${way.input} ${way.programme}`} {...way} />
    ))}
  </svg>
);

/** What crosses first, so that what belongs runs over it. */
const inOrder = (entries: Props["entries"]): readonly WayProps[] =>
  entries
    .flatMap((row, input) => row.map((entry, programme) => ({ entry, programme, input })))
    .sort((a, b) => Number(a.input === a.programme) - Number(b.input === b.programme));

interface WayProps {
  readonly entry: MeasuredEntry;
  readonly programme: number;
  readonly input: number;
}

/** What comes over from the other side runs beside the lane it meets. */
function besideLane(programme: number, input: number, level: Decibels): number {
  if (programme === input) return 0;
  return (programme < input ? -1 : 1) * (widthOf(level) + 5);
}

const seen = ({ carried, level }: MeasuredEntry): boolean => carried && level >= faintest;

/** Where a way arrives. */
const arrival = ({ entry, programme, input }: WayProps): number =>
  (across[input] ?? 0) + besideLane(programme, input, entry.level);

/** One programme's way to one input. */
function Way(props: WayProps) {
  const { entry, programme, input } = props;
  const from = across[programme] ?? 0;
  if (!seen(entry)) return programme === input ? <Broken y={from} /> : null;
  const d = `${sway(at, [apart, from], [back, arrival(props)])} H${to}`;
  return (
    <g style={{ "--lane": `${widthOf(entry.level).toFixed(1)}px` }}>
      <Lane over carries={sides[programme] ?? "left"} d={d} />
    </g>
  );
}

/** A minus where it arrives upside down. */
function Sign(props: WayProps) {
  if (!seen(props.entry) || props.entry.polarity !== -1) return null;
  return (
    <g transform={`translate(${back + 10 + 26 * props.programme} ${arrival(props)})`}>
      <circle class="knot open" r="11" />
      <path class="sign" d="M-6 0H6" />
    </g>
  );
}

/** A side that does not come back where it belongs. */
const Broken = ({ y }: { readonly y: number }) => (
  <>
    <Lane carries="nothing" d={straightOn(at, apart + 34, to, y)} />
    {[6, 22].map((x) => (
      <path key={x} class="bar" d={`M${apart + x} ${y - 12}V${y + 12}`} />
    ))}
  </>
);
