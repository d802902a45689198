import { sheet } from "#core/report/sheet.ts";
import { useWords } from "#ui/words/use-words.ts";
import { type MakingState, useMaking } from "./use-making.ts";
import type { Held } from "./use-page.ts";

/** All sounds as files with a sheet, for a player that runs no browser. */
export function TakeAway({ held }: { readonly held: Held }) {
  const { language, sounds } = useWords();
  const { takeAway } = sounds;
  const { state, make, stop } = useMaking(held);
  const rate = held.edges.player.rate();
  return (
    <div class="take-away">
      <h2>{takeAway.title}</h2>
      <p>{takeAway.what}</p>
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
  const { takeAway } = useWords().sounds;
  switch (state.at) {
    case "making":
      return (
        <p role="status">
          <progress value={state.share} /> {`${Math.round(100 * state.share)} %`}
          <button type="button" class="step" onClick={onStop}>
            {takeAway.stop}
          </button>
        </p>
      );
    case "made":
      return (
        <a class="tape" href={state.address} download="test-signals.zip">
          {takeAway.save(Math.round(state.megabytes))}
        </a>
      );
    default:
      return (
        <>
          {state.at === "failed" && <p role="alert">{takeAway.failed}</p>}
          <button type="button" class="tape" onClick={onMake}>
            {takeAway.make}
          </button>
        </>
      );
  }
}
