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
    void edges.player.speak(pointing(position), { through });
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

/** What to do, and at which position it is. */
const pointing = (position: number | undefined): readonly Prompt[] => [
  ...seat(position),
  { prompt: "point-to-where" },
];

/** Whether whoever answers knows what to do: they wear them with the page in hand, were told here before, or heard it to its end now. */
export async function toldFirst(
  { page, edges, change }: Pick<Held, "page" | "edges" | "change">,
  place: string,
  { position, through }: Pick<Props, "position" | "through">,
): Promise<boolean> {
  if (page.answering === "wearing" || page.told === place) return true;
  const { ended } = await edges.player.speak(pointing(position), { through });
  if (ended === "played") change((one) => ({ ...one, told: place }));
  return ended === "played";
}

const seat = (number: number | undefined): readonly Prompt[] =>
  number === undefined || number < 1 || number > highestPosition
    ? []
    : [{ prompt: "position", number }];
