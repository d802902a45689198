import type { Layout } from "./pin-ends.tsx";
import { type Place, pinOf } from "./pin-places.ts";
import { contactSpot } from "./plug-picture.tsx";

interface At {
  readonly at: { readonly x: number; readonly y: number };
}

/** Two bars across a wire that is not joined through. */
export const Break = ({ at: { x, y } }: At) => (
  <path class="break" d={`M${x - 7} ${y - 10}V${y + 10}M${x + 7} ${y - 10}V${y + 10}`} />
);

/** A word on a wire. */
export const Label = ({ at: { x, y }, text }: At & { readonly text: string }) => (
  <text class="wire-label" x={x} y={y - 9} text-anchor="middle">
    {text}
  </text>
);

/** A letter on tape: what an end is called. */
export const Letter = ({ at: { x, y }, letter }: At & { readonly letter: string }) => (
  <g class="letter-tape" transform={`translate(${x} ${y}) rotate(-2)`}>
    <path d="M0 2L30 0L29 22L1 24Z" />
    <text x="15" y="18" text-anchor="middle">
      {letter}
    </text>
  </g>
);

interface ProbeProps {
  readonly node: string;
  readonly place: Place;
  readonly layout: Layout;
  readonly from: "above" | "below";
}

/** A meter's probe with its point on a contact. */
export function Probe({
  node,
  place: { end, west, middle },
  layout: { width, scale },
  from,
}: ProbeProps) {
  const [along, aside] = end.isSocket ? [11, 0] : contactSpot(end.kind, pinOf(node).contact);
  const out = 3 + along * scale;
  const lean = (from === "above" ? 0 : 180) + (west === (from === "above") ? 24 : -24);
  const x = west ? out : width - out;
  return (
    <g class="probe" transform={`translate(${x} ${middle + aside * scale}) rotate(${lean})`}>
      <path class="needle" d="M0 0V-18" />
      <rect class="handle" x="-4.5" y="-54" width="9" height="37" rx="4" />
    </g>
  );
}
