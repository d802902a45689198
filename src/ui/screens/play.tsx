import type { ComponentChildren } from "preact";
import { useRef } from "preact/hooks";
import { HeadPicture } from "#ui/parts/head-picture.tsx";
import { useArrival } from "#ui/parts/use-arrival.ts";

interface Props {
  readonly muted: boolean;
  readonly facing: boolean;
  readonly onPlay: () => void;
  readonly onHandsOff: () => void;
}

/** The head, waiting, and the press that sounds; while a hand is on the gear, the press that says it is off. */
export const Play = ({ muted, facing, onPlay, onHandsOff }: Props) => (
  <div class="sounding">
    <div class={facing ? "stage facing" : "stage"}>
      <HeadPicture />
    </div>
    {muted ? (
      <FirstButton key="hands" kind="play hands" onPress={onHandsOff}>
        Hands are off the gear
      </FirstButton>
    ) : (
      <FirstButton key="play" kind="play" onPress={onPlay}>
        <PlaySign />
        Play
      </FirstButton>
    )}
  </div>
);

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
