import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { HeadPicture } from "#ui/parts/head-picture.tsx";
import { useArrival } from "#ui/parts/use-arrival.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly onPlay: () => void;
  /** What else may be pressed here. */
  readonly children?: ComponentChildren;
}

/** The head, waiting, and the press that sounds; while it is muted, the press that says it may sound again. */
export function Play({ held: { page, world, edges }, onPlay, children }: Props) {
  const { sounding } = useWords();
  const { muted, turnedUp } = world;
  return (
    <div class="sounding">
      <div class={page.answering === "facing" ? "stage facing" : "stage"}>
        <HeadPicture />
      </div>
      {muted ? (
        <FirstButton key="hands" kind="play hands" onPress={edges.player.handOff}>
          {mutedWords(sounding, turnedUp)}
        </FirstButton>
      ) : (
        <FirstButton key="play" kind="play" onPress={onPlay}>
          <PlaySign />
          {sounding.play}
        </FirstButton>
      )}
      {children}
    </div>
  );
}

/** What ends the silence: a hand taken away, or the volume turned back down. */
export const mutedWords = (
  { volumeBack, handsOff }: Words["sounding"],
  turnedUp: boolean,
): string => (turnedUp ? volumeBack : handsOff);

interface FirstProps {
  readonly kind: string;
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

/** The button that has the focus when the screen comes: one Enter plays. */
function FirstButton({ kind, onPress, children }: FirstProps) {
  const button = useRef<HTMLButtonElement>(null);
  useArrival(button);
  return (
    <button type="button" class={kind} ref={button} aria-describedby="question" onClick={onPress}>
      {children}
    </button>
  );
}

export const PlaySign = () => (
  <svg viewBox="0 0 24 24" aria-hidden="true">
    <path d="M7 4l13 8-13 8z" />
  </svg>
);
