import type { Heard } from "#core/listening/heard.ts";

/** Where on the head a place is, from its middle. */
const spots: Readonly<Partial<Record<string, readonly [x: number, y: number]>>> = {
  "left ear": [-15, 0],
  "off to the left": [-8, 0],
  middle: [0, 0],
  "off to the right": [8, 0],
  "right ear": [15, 0],
};

interface Props {
  readonly x: number;
  readonly pan: "left" | "middle" | "right";
  readonly heard: Heard;
}

const pointers = { left: -55, middle: 0, right: 55 } as const;

/** A head from above with what is heard on it, and over it the pan knob that goes with it. */
export function SmallHead({ x, pan, heard }: Props) {
  const place = heard.replace("faint, ", "");
  const faint = heard.startsWith("faint");
  const [dx, dy] = spots[place] ?? [0, 0];
  return (
    <g transform={`translate(${x} 38)`}>
      <path class="pan" d="M0 -26V-34" transform={`rotate(${pointers[pan]} 0 -26)`} />
      <circle class="pan-knob" cy="-26" r="3" />
      <ellipse class="skull" rx="13" ry="15" />
      <path class="skull nose" d="M-4 -14Q0 -20 4 -14" />
      <rect class="cup left" x="-19" y="-7" width="5" height="14" rx="2" />
      <rect class="cup right" x="14" y="-7" width="5" height="14" rx="2" />
      {place === "all round" && <ellipse class="round" rx="19" ry="19" />}
      {spots[place] && (
        <circle class={faint ? "spot-dot faint" : "spot-dot"} cx={dx} cy={dy} r={faint ? 3 : 5} />
      )}
    </g>
  );
}
