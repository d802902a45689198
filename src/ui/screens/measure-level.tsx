import type { Measurer, MeasurerWorld } from "#audio/measurer.ts";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { Loudness } from "./loudness.tsx";
import type { Ways } from "./page.ts";
import type { Held } from "./use-page.ts";

/** While the level is looked for. */
export function FindingLevel({ held, returns, measurer, world }: FindingProps) {
  const { level } = useWords().measure;
  return (
    <>
      <Heading>{level.title}</Heading>
      <p class="hint">{level.hint}</p>
      <HookUpPicture first={world.route.first} returns={returns} />
      <GoingOut measurer={measurer} world={world} free={false} />
      <Stop onStop={held.silence} />
    </>
  );
}

/** Ends whatever is played and recorded. */
export function Stop({ onStop }: { readonly onStop: () => void }) {
  const { level } = useWords().measure;
  return (
    <div class="foot">
      <button type="button" class="main" onClick={onStop}>
        {level.stop}
      </button>
    </div>
  );
}

interface FindingProps extends Omit<Props, "free"> {
  readonly held: Held;
  readonly returns: Ways["returns"];
}

interface Props {
  readonly measurer: Measurer;
  readonly world: MeasurerWorld;
  /** The level may be moved by hand now. */
  readonly free: boolean;
}

/** How loud it goes out, and what comes back of it. */
export function GoingOut({ measurer, world, free }: Props) {
  const words = useWords();
  return (
    <div class="going-out level">
      <Loudness level={world.level} muted={world.doing === "nothing"} free={free} by={measurer} />
      <p class="note">{backWords(words, world)}</p>
    </div>
  );
}

/** What comes back, input by input. */
function backWords({ figures, measure }: Words, { returned }: MeasurerWorld): string {
  const { nothingBack, input, back, tooMuchBack } = measure.level;
  if (returned === undefined) return nothingBack;
  const each = returned.levels.map((level, at) => input(at + 1, figures.dbfs(level)));
  return (returned.peak > -1 ? tooMuchBack : back)(each);
}
