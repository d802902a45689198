import { useEffect, useRef, useState } from "preact/hooks";
import { refusalText } from "#core/words/refusal-text.ts";
import type { Analysed, Analysis, Playing } from "#recording/analyse.ts";
import { troubleText } from "#recording/words.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { Working } from "#worker/measuring.ts";
import { Heading } from "./frame.tsx";
import { Stop } from "./measure-level.tsx";
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
export function FileDrop({ onFile }: { readonly onFile: Reading["take"] }) {
  const { title, how, choose } = useWords().returning.recording;
  return (
    <div class="recording">
      <h2>{title}</h2>
      <p class="note">{how}</p>
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
          {choose}
        </label>
      </p>
    </div>
  );
}

/** A recording that is read, and what was made of it. */
export function Recording({ reading: { state, take, stop } }: { readonly reading: Reading }) {
  const words = useWords();
  const { recording } = words.returning;
  switch (state.at) {
    case "rest":
      return null;
    case "reading":
      return (
        <>
          <Heading key="reading">{recording.reading}</Heading>
          <p role="status" class="how-far">
            <progress value={state.share} />{" "}
            {recording.share(Math.round(100 * state.share), state.name)}
          </p>
          <Stop onStop={stop} />
        </>
      );
    case "failed":
      return (
        <>
          <Heading key="failed">{recording.failed}</Heading>
          <p class="why-not" role="alert">
            {recording.failedWhy}
          </p>
          <FileDrop onFile={take} />
        </>
      );
    case "read":
      return (
        <>
          {"trouble" in state.analysis ? (
            <>
              <Heading key="trouble">{recording.cannot(state.name)}</Heading>
              <p class="why-not" role="alert">
                {troubleText(words.recording, state.analysis)}
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
  const { figures, recording, returning } = useWords();
  const words = returning.recording;
  const [chosen, setChosen] = useState(0);
  const { playings, found, odd } = analysed;
  const playing = playings[chosen];
  return (
    <>
      {playing ? (
        <OnePlaying key={chosen} playing={playing} />
      ) : (
        <Heading key="nothing">{words.notIn}</Heading>
      )}
      <p role="status">
        {[
          words.name(name),
          recording.found(found, playings.length),
          ...odd.map((one) => recording.odd[one]),
        ].join(" ")}
      </p>
      {playings.length > 1 && (
        <Roving label={words.playings} kind="own-words">
          {playings.map(({ from }, at) => (
            <button
              key={from}
              type="button"
              class="say"
              aria-pressed={at === chosen}
              onClick={() => setChosen(at)}
            >
              {words.at(figures.moment(from))}
            </button>
          ))}
        </Roving>
      )}
    </>
  );
}

function OnePlaying({ playing: { measured, channels } }: { readonly playing: Playing }) {
  const { language, returning } = useWords();
  if ("refused" in measured)
    return (
      <>
        <Heading>{returning.refused.title}</Heading>
        <p class="why-not" role="alert">
          {refusalText(language, measured)}
        </p>
      </>
    );
  return (
    <ReturnResult taken={{ measured, level: undefined }} healthy={undefined} returns={undefined}>
      <p class="note">{returning.recording.channels(channels)}</p>
    </ReturnResult>
  );
}
