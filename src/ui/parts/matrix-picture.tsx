import type { Ears } from "#core/report/numbers.ts";

/** Under this a way is not drawn. */
const least = -40;

/** From the programme's side to the ear, as `Ears` has them: the heights of both ends. */
const ways = [
  { from: 16, to: 16, side: "left", key: "ll" },
  { from: 56, to: 16, side: "right", key: "lr" },
  { from: 16, to: 56, side: "left", key: "rl" },
  { from: 56, to: 56, side: "right", key: "rr" },
] as const;

/** The ear matrix as two lanes that may cross: the louder the thicker, dashed where it comes upside down. */
export const MatrixPicture = ({ ears }: { readonly ears: Ears }) => (
  <svg class="matrix-picture" viewBox="0 0 150 72" aria-hidden="true">
    {ways.map(({ from, to, side, key }, at) => {
      const { level = least, degrees = 0 } = ears[at] ?? {};
      if (level < least) return null;
      return (
        <path
          key={key}
          class={Math.abs(degrees) > 90 ? `way ${side} turned` : `way ${side}`}
          stroke-width={1 + (6 * (Math.min(0, level) - least)) / -least}
          d={`M24 ${from}C70 ${from} 80 ${to} 126 ${to}`}
        />
      );
    })}
    {[16, 56].map((y, at) => (
      <g key={y} class={at === 0 ? "left" : "right"}>
        <text class="letter" x="10" y={y + 5} text-anchor="middle">
          {at === 0 ? "L" : "R"}
        </text>
        <circle class={`cup ${at === 0 ? "left" : "right"}`} cx="138" cy={y} r="8" />
      </g>
    ))}
  </svg>
);
