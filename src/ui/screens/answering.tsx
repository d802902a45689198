import { Roving } from "#ui/parts/roving.tsx";
import { SeatHead } from "#ui/parts/seat-head.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { type AnswersBy, answersBy } from "./page.ts";
import type { Held } from "./use-page.ts";

/** How whoever wears them is seen: as oneself, nose down by somebody who faces them, nose up by somebody behind them. */
const looks = { wearing: "up", facing: "down", behind: "up" } as const;

/** Who answers: whoever has the page in hand, or somebody who points, from the front or from behind. */
export function Answering({ held: { page, change } }: { readonly held: Held }) {
  const { round } = useWords();
  const set = (answering: AnswersBy) => change((one) => ({ ...one, answering }));
  return (
    <Roving label={round.answering} kind="answering">
      {answersBy.map((by) => (
        <button
          key={by}
          type="button"
          class="say"
          aria-pressed={page.answering === by}
          onClick={() => set(by)}
        >
          <SeatHead looks={looks[by]} heard={by === "wearing" ? "" : "left ear"} />
          {round[by]}
        </button>
      ))}
    </Roving>
  );
}
