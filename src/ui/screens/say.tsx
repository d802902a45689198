import type { EarMatrix } from "#audio/ear-matrix.ts";
import { highestPosition, type Prompt } from "#core/prompts/prompt.ts";
import { useWords } from "#ui/words/use-words.ts";
import { answererIn } from "./page.ts";
import type { Held } from "./use-page.ts";

interface Ears {
  /** Which of the positions it is said to, counted from one; left out, to everybody. */
  readonly position?: number;
  /** As the bench's rig would sound; left out with real gear. */
  readonly through?: EarMatrix | undefined;
}

interface Props extends Ears {
  readonly held: Held;
  /** The position it is said at; left out, at all of them at once. */
  readonly place?: string;
}

/** Tells whoever listens what to do, in their own ears, so that it comes through whatever is wrong. */
export function Say({ held, place, ...ears }: Props) {
  const { sounding } = useWords();
  const { world, change } = held;
  const waits = world.playing || world.muted;
  const say = () => {
    if (waits) return;
    change((one) => ({ ...one, sounded: true }));
    void tell(held, place, ears);
  };
  return (
    <button type="button" class="quiet prompt" aria-disabled={waits} onClick={say}>
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
  held: Pick<Held, "page" | "edges" | "change">,
  place: string,
  ears: Ears,
): Promise<boolean> {
  const { page } = held;
  return answererIn(page) === "wearing" || page.told === place || tell(held, place, ears);
}

/** Says what to do; whether it was heard to its end, and then it is noted for whom. */
async function tell(
  { edges, change }: Pick<Held, "edges" | "change">,
  place: string | undefined,
  { position, through }: Ears,
): Promise<boolean> {
  const { ended } = await edges.player.speak(pointing(position), { through });
  const played = ended === "played";
  if (played && place !== undefined) change((one) => ({ ...one, told: place }));
  return played;
}

const seat = (number: number | undefined): readonly Prompt[] =>
  number === undefined || number < 1 || number > highestPosition
    ? []
    : [{ prompt: "position", number }];
