import { earCheck } from "#core/checks/catalogue.ts";
import type { EarCheck } from "#core/checks/check.ts";
import { seatName } from "#core/report/names.ts";
import { BurstCue } from "#ui/parts/burst-cue.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Answering } from "./answering.tsx";
import { Answers } from "./answers.tsx";
import { type AskedByEar, type AskState, afterAnswer, questionNow } from "./ask-state.ts";
import { benchEars } from "./bench-ears.ts";
import { Level } from "./level.tsx";
import { answererIn } from "./page.ts";
import { Play } from "./play.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { Say, toldFirst } from "./say.tsx";
import { useAsking } from "./use-asking.ts";
import { usePlace } from "./use-place.ts";

type Props = AtPosition & { readonly asked: AskedByEar };

/** One sound, and what is asked about it. */
export function Ask(props: Props) {
  const { held, ready, asked } = props;
  const check = earCheck(asked.check);
  const [state, setState] = useAsking(held, asked);
  const { page, world, edges } = held;
  usePlace(held, asked.position, check.signal);
  const play = async () => {
    if (world.playing) return;
    // The same once more: for hiss, with the volume still up.
    if (world.turnedUp && state.phase === "question") edges.player.handOff();
    held.change((one) => ({ ...one, sounded: true }));
    const seed = edges.chance();
    if (!(await toldFirst(held, asked.position, earsOf(props)))) return;
    const played = await playThrough(props, check, seed);
    setState((before) => ({ ...before, phase: played ? "question" : "play", seed, given: [] }));
  };
  const answer = (given: readonly string[]) => {
    if (world.playing) return;
    const next = afterAnswer(check, asked, state, given);
    if ("phase" in next) setState(() => next);
    else held.enter({ entry: "finding", finding: next });
  };
  const change = () => setState((before) => ({ ...before, changes: !before.changes }));
  const question = questionNow(check, state);
  const { moves } = ready.derived.evidence.era.course;
  return (
    <section class={world.playing ? "ask listening" : "ask"}>
      <Asked {...props} check={check} state={state} />
      {question === undefined || waits(state, held) ? (
        <Play held={held} onPlay={play}>
          <Said {...props} />
        </Play>
      ) : (
        <Answers
          key={`${state.first === undefined} ${state.given.length}`}
          check={check.name}
          question={question}
          follows={state.given.length > 0 || state.first !== undefined}
          facing={answererIn(page) === "facing"}
          exchanged={ready.bench?.backwards(asked.position, moves) ?? false}
          changes={state.changes}
          onChanges={state.first === undefined ? change : undefined}
          onAnswer={answer}
          onAgain={play}
        />
      )}
      {state.phase === "play" && ready.bench === undefined && <Answering held={held} />}
      <Level held={held} />
    </section>
  );
}

/** Nothing is asked before it played; whoever comes back to a question with a hand still on the gear takes that off first. */
const waits = ({ phase }: AskState, { world: { muted, turnedUp } }: Props["held"]): boolean =>
  phase === "play" || (muted && !turnedUp);

/** What to do, said in the ears of the position that is asked. */
const Said = (props: Props) => (
  <Say held={props.held} place={props.asked.position} {...earsOf(props)} />
);

/** Whose ears hear it: which of the positions, counted from one, and what reaches them on the bench. */
const earsOf = ({ held, ready: { bench, derived }, asked }: Props) => ({
  position: 1 + derived.rig.positions.findIndex(({ id }) => id === asked.position),
  through: benchEars(bench, derived, asked.position, held.page.log.length),
});

type AskedProps = Props & { readonly check: EarCheck; readonly state: AskState };

/** What to listen for, then what was asked. */
function Asked({ held, ready, position, asked, check, state }: AskedProps) {
  const { language, asking } = useWords();
  const { before, questions } = language.checks[check.name];
  const question = questions[state.given.length] ?? "";
  const go = asked.position !== position || held.world.lowered;
  return (
    <header>
      <Tape>{seatName(ready.derived.rig, asked.position)}</Tape>
      <h1 id="question">{state.phase === "play" ? before : asksNow(asking, state, question)}</h1>
      <p class={go ? "hint go" : "hint"}>{hint(asking, { held, ready, position, asked }, state)}</p>
      {check.questions.length > 1 && (
        <BurstCue signal={check.signal} playing={held.world.playing} />
      )}
    </header>
  );
}

/** Plays the sound, on the bench as its rig would. A sound that did not play to its end asks nothing. */
async function playThrough(
  { held: { edges, page }, ready: { bench, derived }, asked }: Props,
  { signal }: EarCheck,
  seed: number,
): Promise<boolean> {
  const through = benchEars(bench, derived, asked.position, page.log.length);
  const { ended } = await edges.player.play(signal, seed, { through });
  return ended === "played";
}

type AskingWords = Words["asking"];

const asksNow = ({ otherTimes }: AskingWords, { first }: AskState, question: string): string =>
  first === undefined ? question : otherTimes(question);

function hint(
  words: AskingWords,
  { held, ready, position, asked }: Props,
  { phase }: AskState,
): string {
  const { rig } = ready.derived;
  if (phase === "question")
    return asked.check === "cup" && ready.bench ? words.benchCup : words.asHeard;
  if (held.world.turnedUp) return words.turnedUp;
  if (held.world.muted) return words.muted;
  if (held.world.lowered) return words.lowered;
  return asked.position === position
    ? words.playThenPoint
    : words.goTo(seatName(rig, asked.position), seatName(rig, position));
}
