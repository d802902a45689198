import type { Heard } from "#core/listening/heard.ts";
import type { HumRisk } from "#core/patching/hum.ts";
import type { Panning } from "#core/patching/panning.ts";
import { SmallHead } from "./small-head.tsx";

/** Three heads from above: where a source is heard, panned left, to the middle, right. */
export const PanPicture = ({ panning }: { readonly panning: Panning }) => (
  <svg class="fact-picture" viewBox="0 0 132 60" aria-hidden="true">
    {(["left", "middle", "right"] as const).map((pan, index) => (
      <SmallHead key={pan} x={22 + index * 44} pan={pan} heard={panning[pan] as Heard} />
    ))}
  </svg>
);

/** How high a bar stands for a level: full height at +6 dB, none at −30. */
const heightOf = (level: number): number => Math.max(0, Math.min(1, (level + 30) / 36)) * 46;

/** Two bars beside the line that is the output's own level. */
export const LevelPicture = ({
  level: [left, right],
}: {
  readonly level: readonly [number, number];
}) => (
  <svg class="fact-picture level-picture" viewBox="0 0 76 60" aria-hidden="true">
    <rect class="contact left" x="20" y={54 - heightOf(left)} width="14" height={heightOf(left)} />
    <rect
      class="contact right"
      x="44"
      y={54 - heightOf(right)}
      width="14"
      height={heightOf(right)}
    />
    <path class="own" d={`M8 ${54 - heightOf(0)}H68`} />
    <path class="ground" d="M8 54H68" />
  </svg>
);

/** What a box stands on: a mains earth, a two-pin supply, or its battery. */
const feet: Readonly<Record<string, string>> = {
  "mains-earthed": "M0 0V10M-9 10H9M-6 14H6M-3 18H3",
  floating: "M-4 0V9M4 0V9M-9 9H9V14H-9Z",
  charging: "M-4 0V9M4 0V9M-9 9H9V14H-9Z",
};
const battery = "M-9 4H9V15H-9ZM-4 4V1H4V4";

interface EarthProps {
  readonly hum: HumRisk;
  readonly supplies: readonly [string | undefined, string | undefined];
}

/** The two boxes, what each stands on, and between them a wave where it hums. */
export const EarthPicture = ({ hum, supplies }: EarthProps) => (
  <svg class="fact-picture" viewBox="0 0 104 60" aria-hidden="true">
    {supplies.map((supply, index) => (
      <g key={index === 0 ? "from" : "into"} transform={`translate(${index === 0 ? 18 : 86} 12)`}>
        <rect class="box" x="-16" y="-8" width="32" height="24" rx="3" />
        <path
          class="foot"
          d={supply === undefined ? "" : (feet[supply] ?? battery)}
          transform="translate(0 20)"
        />
      </g>
    ))}
    <path class="tie" d="M34 16H70" />
    {hum !== "none" && (
      <path class={hum === "loud" ? "wave loud" : "wave"} d="M36 16q4 -14 8 0t8 0t8 0t8 0" />
    )}
  </svg>
);

/** A plug in an output, and what it is up against. */
export const StrainPicture = ({ strained }: { readonly strained: boolean }) => (
  <svg class="fact-picture" viewBox="0 0 84 60" aria-hidden="true">
    <rect class="box" x="4" y="10" width="26" height="40" rx="4" />
    <circle class="nut" cx="30" cy="30" r="10" />
    <path class="tie" d="M30 30H56" />
    {strained ? (
      <path class="short" d="M56 14V46M66 20V40M75 26V34" />
    ) : (
      <path class="foot" d="M56 30l3 -9 6 18 6 -18 3 9" />
    )}
  </svg>
);
