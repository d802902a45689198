import { Lane } from "./lane.tsx";

/** Two lanes out of a plug that is twisted: whole, or in pieces where it comes and goes. */
export const TwistPicture = ({ steady }: { readonly steady: boolean }) => (
  <svg class="twist-picture" viewBox="0 0 150 64" aria-hidden="true">
    <path class="box" d="M2 22H30V42H2Z" />
    <path class="said-over" d="M10 12C16 2 28 4 28 14M28 14L22 11M28 14L32 9" />
    {(["left", "right"] as const).map((side, at) => (
      <g key={side}>
        {pieces(steady).map(([from, to]) => (
          <Lane key={from} carries={side} d={`M${from} ${26 + 12 * at}H${to}`} />
        ))}
      </g>
    ))}
  </svg>
);

const pieces = (steady: boolean): readonly (readonly [from: number, to: number])[] =>
  steady
    ? [[30, 150]]
    : [
        [30, 58],
        [72, 80],
        [96, 122],
        [136, 150],
      ];
