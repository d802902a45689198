import type { MeasurerTrouble } from "#audio/measurer.ts";
import { flexPlace } from "#core/measurement/flex-marks.ts";
import type { FlexEvent, FlexStatus } from "#core/measurement/flex-names.ts";
import type { FlexState, FlexWatch } from "#core/measurement/flex-watch.ts";
import { capital, counted } from "#core/report/phrases.ts";
import { FlexLead } from "#ui/parts/flex-lead.tsx";
import { FlexStrip } from "#ui/parts/flex-strip.tsx";
import { placesOf } from "./flex-live.tsx";
import {
  besideWords,
  eventWords,
  limitWords,
  overNote,
  placeWords,
  worstFirst,
} from "./flex-words.ts";
import { Heading } from "./frame.tsx";
import { measurerTroubleWords } from "./measure-words.ts";
import { lasting, moment } from "./numbers.ts";
import type { FlexBout } from "./use-flex.ts";

interface Props {
  readonly bout: FlexBout;
  readonly trouble: MeasurerTrouble | undefined;
}

/** What a run of the watch came to: the whole of it, each event with its place, and what it could not see. */
export function FlexResult({ bout: { tap, again }, trouble }: Props) {
  const { watch } = tap;
  if (watch === undefined) return null;
  const { state } = watch;
  return (
    <>
      {trouble && (
        <p class="message" role="alert">
          {measurerTroubleWords[trouble]} What was seen until then stands below.
        </p>
      )}
      <Heading>{resultWords(state)}</Heading>
      <Whole watch={watch} state={state} />
      <FlexLead places={placesOf(state)} />
      <Events state={state} />
      <Beside state={state} />
      <div class="foot">
        <button type="button" class="main" onClick={again}>
          Watch again
        </button>
      </div>
    </>
  );
}

/** The result as a sentence. */
function resultWords({ events, earlier, now }: FlexState): string {
  const count = events.length + (earlier?.count ?? 0);
  if (count === 0) return `Nothing let go in ${lasting(now)}`;
  const [worst] = worstFirst(events);
  const which = worst ? `, the worst: ${eventWords(worst)}` : "";
  return `${counted(count, "event", "events")} in ${lasting(now)}${which}`;
}

const Whole = ({ watch, state }: { readonly watch: FlexWatch; readonly state: FlexState }) => (
  <>
    <FlexStrip
      label={`Left and right over the whole run of ${lasting(state.now)}`}
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
      <span>0:00</span>
      <span>{moment(state.now)}</span>
    </p>
    <p class="note">{overNote}</p>
  </>
);

/** So many events are listed at once. */
const listed = 20;

function Events({ state: { events, marks } }: { readonly state: FlexState }) {
  const all = worstFirst(events);
  if (all.length === 0) return null;
  const row = (event: FlexEvent) => (
    <li key={event.id}>
      <strong>{capital(eventWords(event))}</strong>
      <span class="dim">{` At ${moment(event.at)}, ${placeWords(flexPlace(event, marks))}.`}</span>
    </li>
  );
  return (
    <>
      <h2>Worst first</h2>
      <ol class="events">{all.slice(0, listed).map(row)}</ol>
      {all.length > listed && (
        <details>
          <summary>{`${all.length - listed} more`}</summary>
          <ol class="events">{all.slice(listed).map(row)}</ol>
        </details>
      )}
    </>
  );
}

function Beside({ state }: { readonly state: FlexState }) {
  const words = [
    ...limitsOf(state.status).map((limit) => limitWords[limit]),
    ...besideWords(state),
  ];
  if (words.length === 0) return null;
  return (
    <>
      <h2>What this could not see, and what else there was</h2>
      <ul class="beside-words">
        {words.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </>
  );
}

const limitsOf = (status: FlexStatus) => (status.status === "learning" ? [] : status.limits);
