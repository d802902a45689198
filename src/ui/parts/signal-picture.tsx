import type { Polarity, Signal } from "#core/signals/signal.ts";

const [width, middle, half, apart] = [120, 26, 7, 11];

/** When a signal sounds on the left, above, and on the right, below; what is upside down is hollow, with a minus. */
export function SignalPicture({ signal }: { readonly signal: Signal }) {
  const along = (time: number) => (time / signal.duration) * width;
  const bars = signal.stretches(1).flatMap(({ start, end, left, right }) => {
    const from = along(start);
    const long = Math.max(2, along(end) - from);
    return [
      { from, long, y: middle - apart, polarity: left, side: "left" },
      { from, long, y: middle + apart, polarity: right, side: "right" },
    ].filter(({ polarity }) => polarity !== 0);
  });
  return (
    <svg class="signal-picture" viewBox={`-14 0 ${width + 18} ${2 * middle}`} aria-hidden="true">
      <path class="rest" d={`M0 ${middle - apart}H${width}M0 ${middle + apart}H${width}`} />
      <text x="-9" y={middle - apart + 4}>
        L
      </text>
      <text x="-9" y={middle + apart + 4}>
        R
      </text>
      {bars.map(({ from, long, y, polarity, side }) => (
        <Bar
          key={`${side} ${from}`}
          from={from}
          long={long}
          y={y}
          polarity={polarity}
          side={side}
        />
      ))}
    </svg>
  );
}

interface BarProps {
  readonly from: number;
  readonly long: number;
  readonly y: number;
  readonly polarity: Polarity;
  readonly side: string;
}

const Bar = ({ from, long, y, polarity, side }: BarProps) => (
  <>
    <rect
      class={polarity < 0 ? `sounds ${side} turned` : `sounds ${side}`}
      x={from}
      y={y - half}
      width={long}
      height={2 * half}
      rx="3"
    />
    {polarity < 0 && <path class="minus" d={`M${from + long / 2 - 5} ${y}h10`} />}
  </>
);
