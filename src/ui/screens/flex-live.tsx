import { useState } from "preact/hooks";
import type { Found, Measurer, MeasurerWorld } from "#audio/measurer.ts";
import { type FlexMark, flexPlace } from "#core/measurement/flex-marks.ts";
import type { FlexRefusal } from "#core/measurement/flex-names.ts";
import type { FlexState } from "#core/measurement/flex-watch.ts";
import { capital } from "#core/report/phrases.ts";
import { FlexLead } from "#ui/parts/flex-lead.tsx";
import { FlexStrip } from "#ui/parts/flex-strip.tsx";
import { HookUpPicture } from "#ui/parts/hook-up-picture.tsx";
import { useLetters } from "#ui/parts/keys.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { shown } from "./flex-tap.ts";
import { countOf, eventWords } from "./flex-words.ts";
import { Heading } from "./frame.tsx";
import { GoingOut } from "./measure-level.tsx";
import { grantedWords, processedWords } from "./measure-words.ts";
import type { FlexBout } from "./use-flex.ts";
import { drawingEvery, useFlexState } from "./use-flex-state.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly bout: FlexBout;
  readonly measurer: Measurer;
  readonly world: MeasurerWorld;
}

/** While it watches: hold it still for a second, then bend it. */
export function FlexLive({ held, bout: { tap, found }, measurer, world }: Props) {
  const words = useWords();
  const { live, refused: refusals, result } = words.flex;
  const [ticks, setTicks] = useState(false);
  const [colour, setColour] = useState(true);
  const free = canTick(held, world);
  const state = useFlexState(tap, () => {
    if (ticks && free) void held.edges.player.play("click", 0);
  });
  const { learning, refused } = standing(state);
  const spoilt = tap.granted && processedWords(words, tap.granted);
  return (
    <>
      <Heading>{headWords(live, learning, refused)}</Heading>
      <p class="hint" role="status">
        {refused ? refusals[refused] : hint(live, learning, found)}
      </p>
      {spoilt && <p class="message">{spoilt}</p>}
      {state && !learning ? (
        <Watched tap={tap} state={state} colour={colour} />
      ) : (
        <>
          <HookUpPicture first={world.route.first} returns={held.page.ways?.returns ?? "joined"} />
          <GoingOut measurer={measurer} world={world} free />
        </>
      )}
      <div class="foot">
        <button type="button" class="main" onClick={held.silence}>
          {live.stop}
        </button>
        <Toggle on={colour} onChange={setColour} label={live.colour} />
        <Toggle on={ticks} onChange={setTicks} label={live.tick} disabled={!free} />
      </div>
      {!learning && <p class="note">{result.over}</p>}
      <p class="note">{free ? live.tickOut : live.noTick}</p>
      {tap.granted && <p class="note">{grantedWords(words, tap.granted)}</p>}
    </>
  );
}

/** Whether it still learns how things are, and why it sees nothing. */
const standing = (state: FlexState | undefined) => ({
  learning: state === undefined || state.status.status === "learning",
  refused: state && "refused" in state.status ? state.status.refused : undefined,
});

type LiveWords = Words["flex"]["live"];

function headWords(
  { refused: cannot, still, bend }: LiveWords,
  learning: boolean,
  refused: FlexRefusal | undefined,
): string {
  if (refused) return cannot;
  return learning ? still : bend;
}

function hint(words: LiveWords, learning: boolean, found: Found | undefined): string {
  if (!learning) return words.bendHint;
  const most = found?.ended === "found" && found.found === "as loud as it may be";
  return most ? `${words.stillHint} ${words.asLoudAsMay}` : words.stillHint;
}

/** Sound for ears may not come out where the tones for the lead do. */
const canTick = ({ world: { route } }: Held, { route: out }: MeasurerWorld): boolean =>
  route.device?.id !== out.device?.id;

interface ToggleProps {
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly label: string;
  readonly disabled?: boolean;
}

const Toggle = ({ on, onChange, label, disabled = false }: ToggleProps) => (
  <label class="check">
    <input type="checkbox" checked={on} disabled={disabled} onChange={() => onChange(!on)} />
    {label}
  </label>
);

interface WatchedProps {
  readonly tap: FlexBout["tap"];
  readonly state: FlexState;
  readonly colour: boolean;
}

/** The strip, what was seen last, and the lead with its two plugs to be marked. */
function Watched({ tap, state, colour }: WatchedProps) {
  const words = useWords();
  const { live, count } = words.flex;
  const counted = count(countOf(state));
  const last = state.marks.at(-1)?.plug;
  const next: FlexMark["plug"] = last === 1 ? 2 : 1;
  const mark = (plug: FlexMark["plug"]) => tap.watch?.mark(plug);
  useLetters((key) => {
    if (key === " ") mark(next);
    if (key === "1" || key === "2") mark(key === "1" ? 1 : 2);
  });
  const still = matchMedia("(prefers-reduced-motion: reduce)").matches;
  const event = state.events.at(-1);
  return (
    <>
      <FlexStrip
        every={drawingEvery}
        label={live.strip(shown, counted)}
        drawing={() => {
          const { watch } = tap;
          if (watch === undefined) return undefined;
          const now = watch.state;
          // Where nothing is to move by itself, the pen moves over a sheet that stands still.
          const to = still ? shown * Math.ceil(now.now / shown) : Math.max(shown, now.now);
          const { events, marks } = now;
          return { view: watch.strip.live(), events, marks, from: to - shown, to, colour };
        }}
      />
      <p class="last-event" aria-live="polite">
        {event === undefined ? live.nothing : live.last(capital(eventWords(words, event)), counted)}
      </p>
      <p class="note">{live.watched(words.figures.moment(state.now))}</p>
      <FlexLead places={placesOf(state)} next={next} onMark={mark} />
    </>
  );
}

/** Where along the lead the events were, as far as marks tell. */
export const placesOf = ({ events, marks }: FlexState): readonly number[] =>
  events.flatMap((event) => flexPlace(event, marks).along ?? []);
