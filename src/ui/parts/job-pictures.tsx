import { eastward, straightOn, sway } from "./direction.ts";
import { sides } from "./effect-lanes.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";

const middle = 60;
const apart = 15;
const at = eastward(0, middle);
const across = (side: "left" | "right"): number => (side === "left" ? -apart : apart);

interface EarsProps {
  readonly x: number;
  readonly y: number;
}

/** Both ears of somebody: left filled, right an outline. */
const Ears = ({ x, y }: EarsProps) => (
  <g transform={`translate(${x} ${y})`}>
    <circle class="cup left" cx="0" cy="-6.5" r="5" />
    <circle class="cup right" cx="0" cy="6.5" r="4.5" />
  </g>
);

/** Where each of the four branches ends, across. */
const seats = [-45, -15, 15, 45];

/** Two lanes that part for everybody. */
export const EveryonePicture = () => (
  <Strip>
    {sides.map((side) => (
      <Lane key={side} carries={side} d={straightOn(at, 0, 700, across(side))} />
    ))}
    {seats.map((seat) => (
      <g key={seat} class="thin">
        {sides.map((side) => (
          <Lane
            key={side}
            carries={side}
            d={`${sway(at, [700, across(side)], [900, seat + across(side) / 2.4])} H1010`}
          />
        ))}
        <Ears x={1017} y={middle + seat} />
        <path class="done" d={`M1040 ${middle + seat}l6 6 11-12`} />
      </g>
    ))}
  </Strip>
);

/** Two lanes of which one breaks off. */
export const WrongPicture = () => (
  <Strip>
    {sides.map((side) => (
      <Lane key={side} carries={side} d={straightOn(at, 0, 740, across(side))} />
    ))}
    <Junction
      at={(along, over) => at(740 + along, over)}
      length={90}
      gap={apart}
      effect="left gone"
    />
    <Lane carries="nothing" d={straightOn(at, 830, 1010, -apart)} />
    <Lane carries="right" d={straightOn(at, 830, 1010, apart)} />
    <circle class="cup gone" cx="1022" cy={middle - apart} r="10" />
    <circle class="cup right" cx="1022" cy={middle + apart} r="9" />
  </Strip>
);

/** A plug of three contacts, its tip towards `end`. */
function Plug({ x, end }: { readonly x: number; readonly end: 1 | -1 }) {
  return (
    <g transform={`translate(${x} ${middle}) scale(${end} 1)`}>
      <path class="box" d="M0 -24 H46 V24 H0 Z" />
      <path class="box" d="M46 -10 H112 L124 0 L112 10 H46 Z" />
      <path class="box" d="M72 -10V10M96 -10V10" />
    </g>
  );
}

/** A lead with nothing at either end. */
export const LeadPicture = () => (
  <Strip>
    <Plug x={470} end={-1} />
    <Plug x={930} end={1} />
    {sides.map((side) => (
      <Lane key={side} carries={side} d={straightOn(at, 470, 930, across(side) * 0.8)} />
    ))}
  </Strip>
);

/** At the right of the page: what matters stands at its end, and the tape lies over its beginning. */
const Strip = ({ children }: { readonly children: preact.ComponentChildren }) => (
  <svg
    class="job-picture"
    viewBox="0 0 1080 120"
    preserveAspectRatio="xMaxYMid meet"
    aria-hidden="true"
  >
    {children}
  </svg>
);
