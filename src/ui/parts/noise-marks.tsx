import type { Noise } from "#core/checks/noise.ts";
import type { ChainShape } from "./chain-shape.ts";

/** Each noise as it looks in a lane: little dots, a slow wave, a jag, peaks cut off. Its middle is at nought. */
const drawn: Readonly<Record<Noise, string>> = {
  hiss: "M-24 -9v.1M-24 9v.1M-18 -15v.1M-18 3v.1M-12 -7v.1M-12 11v.1M-6 -17v.1M-6 1v.1M0 -9v.1M0 9v.1M6 -15v.1M6 3v.1M12 -7v.1M12 13v.1M18 -16v.1M18 2v.1M24 -9v.1M24 9v.1",
  hum: "M-30 0c5 -26 10 -26 15 0s10 26 15 0s10 -26 15 0s10 26 15 0",
  crackle: "M-24 -22L-8 -3L-13 0L6 5L0 9L24 22",
  distortion: "M-30 16V-16H-12V16H6V-16H24V16",
};

/** A noise by itself. */
export const NoiseGlyph = ({ noise }: { readonly noise: Noise }) => (
  <svg class="noise-glyph" viewBox="-36 -28 72 56" aria-hidden="true">
    <path class="said-over" d={drawn[noise]} />
  </svg>
);

/** Where in links from the start a noise may come in, and how likely. */
export interface NoiseMark {
  readonly along: number;
  readonly probability: number;
}

/** The smallest that is still seen, and how likely something must be to be drawn at all. */
const smallest = 0.3;
const least = 0.03;

interface Props {
  readonly noise: Noise;
  readonly shape: ChainShape;
  readonly marks: readonly NoiseMark[];
}

/** The noise over the lanes where it may come in, the larger the likelier, with so many in a hundred beside it. */
export const NoiseMarks = ({ noise, shape: { at, slot, wide, gap }, marks }: Props) => (
  <g class="noise-marks">
    {marks
      .filter(({ probability }) => probability >= least)
      .map(({ along, probability }) => {
        const [x = 0, y = 0] = at(along * slot, 0)
          .split(" ")
          .map(Number);
        const [beside = 0, above = 0] = at(along * slot, -gap)
          .split(" ")
          .map(Number);
        const size = smallest + (1 - smallest) * Math.sqrt(probability);
        return (
          <g key={along}>
            <g transform={`translate(${x} ${y}) scale(${(wide ? 1.25 : 0.85) * size})`}>
              <path class="said-over bed" d={drawn[noise]} />
              <path class="said-over" d={drawn[noise]} />
            </g>
            <text
              class="noise-odds"
              x={wide ? beside : beside - 20}
              y={wide ? above - 26 : above + 5}
              text-anchor={wide ? "middle" : "end"}
            >
              {Math.round(100 * probability)}
            </text>
          </g>
        );
      })}
  </g>
);
