import type { Capture } from "#core/measurement/capture.ts";
import { useWords } from "#ui/words/use-words.ts";
import { useMaking } from "./use-making.ts";
import type { Held } from "./use-page.ts";

/** What was recorded, as a file to keep or to send to somebody. It is gone with the next measurement unless it is saved. */
export function SaveRecording({
  held,
  capture,
}: {
  readonly held: Held;
  readonly capture: Capture;
}) {
  const { recording } = useWords().sounds;
  const { state, make } = useMaking(held);
  if (state.at === "made")
    return (
      <a class="quiet" href={state.address} download="measured.wav">
        {recording.save(Math.round(state.megabytes))}
      </a>
    );
  return (
    <button
      type="button"
      class="quiet"
      disabled={state.at === "making"}
      onClick={() => void make(capture)}
    >
      {state.at === "failed" ? recording.failed : recording.keep}
    </button>
  );
}
