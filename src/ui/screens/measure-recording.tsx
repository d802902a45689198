import { useEffect, useRef, useState } from "preact/hooks";
import { english } from "#core/words/english.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import type { Analysed, Analysis, Playing } from "#recording/analyse.ts";
import { foundText, oddityWords, troubleText } from "#recording/english.ts";
import { Roving } from "#ui/parts/roving.tsx";
import type { Working } from "#worker/measuring.ts";
import { Heading } from "./frame.tsx";
import { Stop } from "./measure-level.tsx";
import { moment } from "./numbers.ts";
import { ReturnResult } from "./return-result.tsx";
import type { Instruments } from "./use-instruments.ts";

type State =
  | { readonly at: "rest" }
  | { readonly at: "reading"; readonly name: string; readonly share: number }
  | { readonly at: "read"; readonly name: string; readonly analysis: Analysis }
  | { readonly at: "failed" };

/** Reads one file at a time; the last press counts. */
export function useReading(instruments: Instruments | undefined, silence: () => void) {
  const [state, setState] = useState<State>({ at: "rest" });
  const working = useRef<Working>(undefined);
  useEffect(() => () => working.current?.stop(), []);
  const take = async (file: File | undefined) => {
    if (file === undefined || instruments === undefined) return;
    silence();
    working.current?.stop();
    const { name } = file;
    setState({ at: "reading", name, share: 0 });
    const own = instruments.reading(file, (share) => setState({ at: "reading", name, share }));
    working.current = own;
    const analysis = await own.analysis.catch(() => "failed" as const);
    if (working.current !== own) return;
    if (analysis === "failed") return setState({ at: "failed" });
    setState(analysis === undefined ? { at: "rest" } : { at: "read", name, analysis });
  };
  return { state, take, stop: () => working.current?.stop() };
}

type Reading = ReturnType<typeof useReading>;

/** A WAV that was recorded elsewhere while our signal played, chosen, or dropped: the screen around takes that. */
export const FileDrop = ({ onFile }: { readonly onFile: Reading["take"] }) => (
  <div class="recording">
    <h2>A recording made elsewhere</h2>
    <p class="note">
      Play “multitone” out of the files to take away, and record what comes back as WAV, both
      channels, from before its first click until it is over. It stays on this device.
    </p>
    <p class="programme">
      <label class="file">
        <input
          type="file"
          accept=".wav,.wave,audio/wav,audio/x-wav"
          onChange={({ currentTarget }) => {
            void onFile(currentTarget.files?.[0]);
            // Else the same file, chosen again, is no change to the browser.
            currentTarget.value = "";
          }}
        />
        Choose a WAV, or drop it here
      </label>
    </p>
  </div>
);

/** A recording that is read, and what was made of it. */
export function Recording({ reading: { state, take, stop } }: { readonly reading: Reading }) {
  switch (state.at) {
    case "rest":
      return null;
    case "reading":
      return (
        <>
          <Heading key="reading">Reading the recording</Heading>
          <p role="status" class="how-far">
            <progress value={state.share} /> {`${Math.round(100 * state.share)} % of ${state.name}`}
          </p>
          <Stop onStop={stop} />
        </>
      );
    case "failed":
      return (
        <>
          <Heading key="failed">It could not be read</Heading>
          <p class="why-not" role="alert">
            The part that reads recordings did not load, or there is too little memory. Close other
            pages and choose the file again.
          </p>
          <FileDrop onFile={take} />
        </>
      );
    case "read":
      return (
        <>
          {"trouble" in state.analysis ? (
            <>
              <Heading key="trouble">{`${state.name} cannot be read`}</Heading>
              <p class="why-not" role="alert">
                {troubleText(state.analysis)}
              </p>
            </>
          ) : (
            <Playings name={state.name} analysed={state.analysis} />
          )}
          <FileDrop onFile={take} />
        </>
      );
  }
}

/** What the recording has of our signal; of several playings one is looked at. */
function Playings({ name, analysed }: { readonly name: string; readonly analysed: Analysed }) {
  const [chosen, setChosen] = useState(0);
  const { playings, found, odd } = analysed;
  const playing = playings[chosen];
  return (
    <>
      {playing ? (
        <OnePlaying key={chosen} playing={playing} />
      ) : (
        <Heading key="nothing">Our signal is not in it</Heading>
      )}
      <p role="status">
        {[
          `${name}.`,
          foundText(found, playings.length),
          ...odd.map((one) => oddityWords[one]),
        ].join(" ")}
      </p>
      {playings.length > 1 && (
        <Roving label="Playings" kind="own-words">
          {playings.map(({ from }, at) => (
            <button
              key={from}
              type="button"
              class="say"
              aria-pressed={at === chosen}
              onClick={() => setChosen(at)}
            >
              {`at ${moment(from)}`}
            </button>
          ))}
        </Roving>
      )}
    </>
  );
}

function OnePlaying({ playing: { measured, channels } }: { readonly playing: Playing }) {
  if ("refused" in measured)
    return (
      <>
        <Heading>It cannot be judged so</Heading>
        <p class="why-not" role="alert">
          {refusalText(english, measured)}
        </p>
      </>
    );
  return (
    <ReturnResult taken={{ measured, level: undefined }} healthy={undefined} returns={undefined}>
      <p class="note">{`Left and right are channels ${channels.join(" and ")} of the file.`}</p>
    </ReturnResult>
  );
}
