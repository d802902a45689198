import type { MeasurerTrouble } from "#audio/measurer.ts";
import { flexPlace } from "#core/measurement/flex-marks.ts";
import type { FlexEvent, FlexStatus } from "#core/measurement/flex-names.ts";
import type { FlexState, FlexWatch } from "#core/measurement/flex-watch.ts";
import { capital } from "#core/report/phrases.ts";
import { FlexLead } from "#ui/parts/flex-lead.tsx";
import { FlexStrip } from "#ui/parts/flex-strip.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { placesOf } from "./flex-live.tsx";
import { besideWords, countOf, eventWords, placeWords, worstFirst } from "./flex-words.ts";
import { Heading } from "./frame.tsx";
import type { FlexBout } from "./use-flex.ts";

interface Props {
  readonly bout: FlexBout;
  readonly trouble: MeasurerTrouble | undefined;
}

/** What a run of the watch came to: the whole of it, each event with its place, and what it could not see. */
export function FlexResult({ bout: { tap, again }, trouble }: Props) {
  const words = useWords();
  const { result } = words.flex;
  const { watch } = tap;
  if (watch === undefined) return null;
  const { state } = watch;
  return (
    <>
      {trouble && (
        <p class="message" role="alert">
          {result.stoppedBy(words.measure.trouble[trouble])}
        </p>
      )}
      <Heading>{resultWords(words, state)}</Heading>
      <Whole watch={watch} state={state} />
      <FlexLead places={placesOf(state)} />
      <Events state={state} />
      <Beside state={state} />
      <div class="foot">
        <button type="button" class="main" onClick={again}>
          {result.again}
        </button>
      </div>
    </>
  );
}

/** The result as a sentence. */
function resultWords(words: Words, state: FlexState): string {
  const { nothing, events: some, eventsAndWorst } = words.flex.result;
  const [count, long] = [countOf(state), words.figures.lasting(state.now)];
  if (count === 0) return nothing(long);
  const [worst] = worstFirst(state.events);
  return worst ? eventsAndWorst(count, long, eventWords(words, worst)) : some(count, long);
}

function Whole({ watch, state }: { readonly watch: FlexWatch; readonly state: FlexState }) {
  const { figures, flex } = useWords();
  return (
    <>
      <FlexStrip
        label={flex.result.strip(figures.lasting(state.now))}
        drawing={() => ({
          view: watch.strip.whole(),
          events: state.events,
          marks: state.marks,
          from: 0,
          to: Math.max(1, state.now),
          colour: true,
        })}
      />
      <p class="ends note">
        <span>{figures.moment(0)}</span>
        <span>{figures.moment(state.now)}</span>
      </p>
      <p class="note">{flex.result.over}</p>
    </>
  );
}

/** So many events are listed at once. */
const listed = 20;

function Events({ state: { events, marks } }: { readonly state: FlexState }) {
  const words = useWords();
  const { result } = words.flex;
  const all = worstFirst(events);
  if (all.length === 0) return null;
  const row = (event: FlexEvent) => (
    <li key={event.id}>
      <strong>{capital(eventWords(words, event))}</strong>
      <span class="dim">{` ${result.at(words.figures.moment(event.at), placeWords(words, flexPlace(event, marks)))}`}</span>
    </li>
  );
  return (
    <>
      <h2>{result.worstFirst}</h2>
      <ol class="events">{all.slice(0, listed).map(row)}</ol>
      {all.length > listed && (
        <details>
          <summary>{result.more(all.length - listed)}</summary>
          <ol class="events">{all.slice(listed).map(row)}</ol>
        </details>
      )}
    </>
  );
}

function Beside({ state }: { readonly state: FlexState }) {
  const words = useWords();
  const { limits, result } = words.flex;
  const lines = [
    ...limitsOf(state.status).map((limit) => limits[limit]),
    ...besideWords(words, state),
  ];
  if (lines.length === 0) return null;
  return (
    <>
      <h2>{result.beside}</h2>
      <ul class="beside-words">
        {lines.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </>
  );
}

const limitsOf = (status: FlexStatus) => (status.status === "learning" ? [] : status.limits);
