import type { Capture } from "#core/measurement/capture.ts";
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
  const { state, make } = useMaking(held);
  if (state.at === "made")
    return (
      <a class="quiet" href={state.address} download="measured.wav">
        {`Save the recording, ${state.megabytes.toFixed(0)} MB`}
      </a>
    );
  return (
    <button
      type="button"
      class="quiet"
      disabled={state.at === "making"}
      onClick={() => void make(capture)}
    >
      {state.at === "failed" ? "It could not be made: try again" : "keep this recording"}
    </button>
  );
}
