import type { DecibelsFullScale } from "#core/units/units.ts";
import { LevelPicture } from "#ui/parts/level-picture.tsx";
import { useHold } from "#ui/parts/use-hold.ts";
import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly level: DecibelsFullScale;
  readonly muted: boolean;
  /** The two presses that move it are there. */
  readonly free: boolean;
  readonly by: { readonly softer: () => void; readonly louder: () => void };
}

/** A level between the least and the most there is, and the two presses that move it. */
export function Loudness({ level, muted, free, by }: Props) {
  const { figures, sounding: words } = useWords();
  const [softer, louder] = [useHold(by.softer), useHold(by.louder)];
  return (
    <div class="loudness">
      <LevelPicture level={level} muted={muted} />
      <span class="now">{figures.dbfs(level)}</span>
      {free && (
        <span>
          <button type="button" class="step" {...softer}>
            {words.softer}
          </button>
          <button type="button" class="step" {...louder}>
            {words.louder}
          </button>
        </span>
      )}
    </div>
  );
}
