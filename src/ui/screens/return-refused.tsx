import type { Capture } from "#core/measurement/capture.ts";
import type { Refusal } from "#core/measurement/return.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { processedWords } from "./measure-words.ts";
import { SaveRecording } from "./save-recording.tsx";
import type { Held } from "./use-page.ts";
import type { Against, Refused, ReturnBout } from "./use-return.ts";

interface Props {
  readonly held: Held;
  /** What was recorded, where anything was. */
  readonly capture?: Capture;
  readonly refused: Refused;
  readonly bout: ReturnBout;
  readonly onAgainst: (against: Against) => void;
}

/** Why there is no result, and what to do. */
export function ReturnRefused({ held, refused, capture, bout, onAgainst }: Props) {
  const words = useWords();
  const texts = words.returning.refused;
  return (
    <>
      <Heading>{refused.why === "not healthy" ? texts.notHealthy : texts.title}</Heading>
      <p class="why-not" role="alert">
        {refusedWords(words, refused)}
      </p>
      <div class="foot">
        {mayPass(refused) && (
          <button type="button" class="main" onClick={bout.measure}>
            {texts.again}
          </button>
        )}
        <button
          type="button"
          class={mayPass(refused) ? "quiet" : "main"}
          onClick={() => bout.again(false)}
        >
          {texts.back}
        </button>
        {refused.why === "not healthy" && (
          <button
            type="button"
            class="quiet"
            onClick={() => {
              onAgainst("as it comes");
              bout.again(false);
            }}
          >
            {texts.asItComes}
          </button>
        )}
        {capture && <SaveRecording held={held} capture={capture} />}
      </div>
    </>
  );
}

/** Whether the same again, in the same place, may well be measured. */
const mayPass = ({ why }: Refused): boolean => why === "not measured" || why === "no worker";

/** Of what goes out here and does not come back, more is known than of a recording. */
const notThere: readonly Refusal[] = ["silent", "too quiet"];

/** Why there is no result, and what to do. */
export function refusedWords(
  words: Words,
  refused: Refused,
  of: "lead" | "cup" = "lead",
): string | undefined {
  const { nothingBack, noMeasure, why, noWorker } = words.returning.refused;
  switch (refused.why) {
    case "not measured":
      return of === "lead" && notThere.includes(refused.how.refused)
        ? nothingBack
        : refusalText(words.language, refused.how);
    case "processed":
      return processedWords(words, refused.granted);
    case "not healthy":
      return noMeasure(why[refused.how]);
    case "no worker":
      return noWorker;
  }
}
