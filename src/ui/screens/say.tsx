import type { EarMatrix } from "#audio/ear-matrix.ts";
import { highestPosition, type Prompt } from "#core/prompts/prompt.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  /** Which of the positions it is said to, counted from one; left out, to everybody. */
  readonly position?: number;
  /** As the bench's rig would sound; left out with real gear. */
  readonly through?: EarMatrix | undefined;
}

/** Tells whoever listens what to do, in their own ears, so that it comes through whatever is wrong. */
export function Say({ held: { world, edges, change }, position, through }: Props) {
  const { sounding } = useWords();
  const say = () => {
    change((one) => ({ ...one, sounded: true }));
    void edges.player.speak([...seat(position), { prompt: "point-to-where" }], { through });
  };
  return (
    <button
      type="button"
      class="quiet prompt"
      disabled={world.playing || world.muted}
      onClick={say}
    >
      {sounding.say}
    </button>
  );
}

const seat = (number: number | undefined): readonly Prompt[] =>
  number === undefined || number < 1 || number > highestPosition
    ? []
    : [{ prompt: "position", number }];
