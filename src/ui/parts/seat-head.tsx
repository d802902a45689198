/** Which way somebody at a table looks. */
export type Looks = "down" | "up" | "right" | "left";

const turns: Readonly<Record<Looks, number>> = { up: 0, right: 90, down: 180, left: 270 };

/** Where on the head a place is, from its middle, nose up. */
const spots: Readonly<Record<string, readonly [x: number, y: number]>> = {
  "left ear": [-20, 0],
  "off to the left": [-10, 0],
  middle: [0, -2],
  "off to the right": [10, 0],
  "right ear": [20, 0],
};

interface Props {
  readonly looks: Looks;
  /** Where it is heard; empty where nobody said yet. */
  readonly heard: string;
}

/** Somebody at a table from above, and where they point. */
export const SeatHead = ({ looks, heard }: Props) => (
  <svg class="seat-head" viewBox="-34 -34 68 68" aria-hidden="true">
    <g transform={`rotate(${turns[looks]})`}>
      <ellipse class="skull" rx="17" ry="20" />
      <path class="skull nose" d="M-5 -19Q0 -27 5 -19" />
      <rect class="cup left" x="-24" y="-9" width="7" height="18" rx="3" />
      <rect class="cup right" x="17" y="-9" width="7" height="18" rx="3" />
      <Pointed heard={heard} />
    </g>
  </svg>
);

function Pointed({ heard }: { readonly heard: string }) {
  const place = heard.replace("faint, ", "");
  if (place === "all round") return <ellipse class="pointed-round" rx="28" ry="29" />;
  const spot = spots[place];
  if (spot === undefined) return null;
  const [x, y] = spot;
  return <circle class="pointed" cx={x} cy={y} r={heard === place ? 8 : 4.5} />;
}
