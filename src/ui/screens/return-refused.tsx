import type { Capture } from "#core/measurement/capture.ts";
import type { Refusal } from "#core/measurement/return.ts";
import { english } from "#core/words/english.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import { Heading } from "./frame.tsx";
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
  return (
    <>
      <Heading>
        {refused.why === "not healthy" ? "That one is not healthy" : "It cannot be judged so"}
      </Heading>
      <p class="why-not" role="alert">
        {refusedWords(refused)}
      </p>
      <div class="foot">
        {mayPass(refused) && (
          <button type="button" class="main" onClick={bout.measure}>
            Measure again
          </button>
        )}
        <button
          type="button"
          class={mayPass(refused) ? "quiet" : "main"}
          onClick={() => bout.again(false)}
        >
          Back to the hook-up
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
            measure it as it comes
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
const nothingBack =
  "The signal is not there, or too deep in the noise. See that the lead is in at both ends and that the right output and input are chosen; else turn the input's gain up.";

/** Why there is no result, and what to do. */
export function refusedWords(refused: Refused, of: "lead" | "cup" = "lead"): string {
  switch (refused.why) {
    case "not measured":
      return of === "lead" && notThere.includes(refused.how.refused)
        ? nothingBack
        : refusalText(english, refused.how);
    case "processed":
      return refused.words;
    case "not healthy":
      return `As a measure it will not do: ${refused.words}. Take another lead that is known to be good, or see that both ends and both inputs are plugged as drawn.`;
    case "no worker":
      return "The part that works it out did not load, or there is too little memory. Close other pages and measure again.";
  }
}
