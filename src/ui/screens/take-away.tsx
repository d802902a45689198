import { useEffect, useRef, useState } from "preact/hooks";
import type { Making } from "#worker/packing.ts";
import type { Held } from "./use-page.ts";

type State =
  | { readonly at: "rest" }
  | { readonly at: "making"; readonly share: number }
  | { readonly at: "made"; readonly address: string; readonly megabytes: number }
  | { readonly at: "failed" };

/** All sounds as files with a sheet, for a player that runs no browser. */
export function TakeAway({ held: { edges } }: { readonly held: Held }) {
  const [state, setState] = useState<State>({ at: "rest" });
  const making = useRef<Making>(undefined);
  useEffect(() => () => making.current?.stop(), []);
  useEffect(() => () => void (state.at === "made" && URL.revokeObjectURL(state.address)), [state]);
  const make = async () => {
    setState({ at: "making", share: 0 });
    making.current = edges.packing(edges.player.rate(), (share) =>
      setState({ at: "making", share }),
    );
    try {
      const file = await making.current.file;
      if (file === undefined) return setState({ at: "rest" });
      setState({ at: "made", address: URL.createObjectURL(file), megabytes: file.size / 1e6 });
    } catch {
      setState({ at: "failed" });
    }
  };
  return (
    <div class="take-away">
      <h2>Take them with you</h2>
      <p>
        WAV files of 24 bits, and a sheet that says what each is and what to hear, for a player that
        runs no browser. What is for instruments only is in it too, and says so.
      </p>
      <Offer state={state} onMake={make} onStop={() => making.current?.stop()} />
    </div>
  );
}

interface OfferProps {
  readonly state: State;
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
