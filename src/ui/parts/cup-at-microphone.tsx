import { useWords } from "#ui/words/use-words.ts";
import type { Side } from "./effect-lanes.ts";

interface Props {
  /** The cup at the microphone. */
  readonly held: Side;
  /** Tones are on their way. */
  readonly playing?: boolean;
  /** It is said beside it already. */
  readonly silent?: boolean;
}

/** The same picture turned over: the band leads away to the side of the other cup. */
const turned = (held: Side): string | undefined =>
  held === "left" ? undefined : "translate(440 0) scale(-1 1)";

const letters = { left: "L", right: "R" } as const;

/** A pair of headphones off the head, one cup flat against the microphone over a laptop's screen, the other turned away. */
export function CupAtMicrophone({ held, playing = false, silent = false }: Props) {
  const { picture } = useWords().cups;
  const other: Side = held === "left" ? "right" : "left";
  const away = held === "left" ? 353 : 87;
  return (
    <svg
      class={playing ? "cup-at-microphone sounding-cup" : "cup-at-microphone"}
      viewBox="0 0 440 250"
      role={silent ? undefined : "img"}
      aria-hidden={silent ? "true" : undefined}
      aria-label={silent ? undefined : picture.label(held)}
    >
      <path class="case" d="M128 232V132Q128 124 136 124H304Q312 124 312 132V232" />
      <path class="case" d="M96 232H344L330 244H110Z" />
      <circle class="microphone" cx="220" cy="137" r="5" />
      <text class="part" x="220" y="168">
        {picture.microphone}
      </text>
      <g transform={turned(held)}>
        <path class="band" d="M220 40C226 4 372 -6 383 84" />
        <path class={`cup ${other} away`} d="M376 70v54h-12c-22 0-32-12-32-27s10-27 32-27z" />
        <path class={`cup ${held}`} d="M184 96V84c0-28 16-44 36-44s36 16 36 44v12z" />
      </g>
      <path class="sound" d="M204 103Q220 110 236 103M196 111Q220 121 244 111" />
      <text class={`letter ${held} on`} x="220" y="78">
        {letters[held]}
      </text>
      <text class={`letter ${other} off`} x={away} y="103">
        {letters[other]}
      </text>
    </svg>
  );
}
