import { sheet } from "#core/report/sheet.ts";
import { useWords } from "#ui/words/use-words.ts";
import { type MakingState, useMaking } from "./use-making.ts";
import type { Held } from "./use-page.ts";

/** All sounds as files with a sheet, for a player that runs no browser. */
export function TakeAway({ held }: { readonly held: Held }) {
  const { state, make, stop } = useMaking(held);
  const { language } = useWords();
  const rate = held.edges.player.rate();
  return (
    <div class="take-away">
      <h2>Take them with you</h2>
      <p>
        WAV files of 24 bits, and a sheet that says what each is and what to hear, for a player that
        runs no browser. What is for instruments only is in it too, and says so.
      </p>
      <Offer
        state={state}
        onMake={() => void make({ rate, sheet: sheet(language, rate) })}
        onStop={stop}
      />
    </div>
  );
}

interface OfferProps {
  readonly state: MakingState;
  readonly onMake: () => void;
  readonly onStop: () => void;
}

function Offer({ state, onMake, onStop }: OfferProps) {
  switch (state.at) {
    case "making":
      return (
        <p role="status">
          <progress value={state.share} /> {`${Math.round(100 * state.share)} %`}
          <button type="button" class="step" onClick={onStop}>
            stop
          </button>
        </p>
      );
    case "made":
      return (
        <a class="tape" href={state.address} download="test-signals.zip">
          {`Save the files, ${state.megabytes.toFixed(0)} MB`}
        </a>
      );
    default:
      return (
        <>
          {state.at === "failed" && (
            <p role="alert">
              The files could not be made: too little memory, or a part of the program did not load.
              Close other pages and press again.
            </p>
          )}
          <button type="button" class="tape" onClick={onMake}>
            Make the files
          </button>
        </>
      );
  }
}
