import { useState } from "preact/hooks";
import { answerText } from "#core/words/answer-text.ts";
import { BurstCue } from "#ui/parts/burst-cue.tsx";
import { Table } from "#ui/parts/table.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { asHeard } from "./ask-state.ts";
import { pointsAt } from "./bench-pointing.ts";
import { Cautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { expectedNow, heardBy, type Pass, seatsToPass, tapped, turns } from "./hands-up-state.ts";
import { Level } from "./level.tsx";
import { mutedWords, PlaySign } from "./play.tsx";
import type { Ready } from "./ready.ts";
import { Say } from "./say.tsx";
import { usePass } from "./use-pass.ts";
import { usePlace, wholeTable } from "./use-place.ts";
import type { Session } from "./use-session.ts";

interface Props {
  readonly held: Session;
  readonly ready: Ready;
}

/** One pass over all seats: everybody hears the same, everybody points, and only those who differ are tapped. */
export function HandsUp({ held, ready }: Props) {
  const words = useWords();
  const { handsUp } = words.asking;
  const [seats] = useState(() => seatsToPass(ready.derived));
  const { pass, change, drop } = usePass(held);
  const { playing, muted, turnedUp } = held.world;
  usePlace(held, wholeTable, "left-ident");
  const now = turns[pass.turn];
  if (now === undefined) return null;
  const play = async () => {
    if (muted) return held.edges.player.handOff();
    held.change((one) => ({ ...one, sounded: true }));
    const seed = held.edges.chance();
    const { ended } = await held.edges.player.play(now.check.signal, seed);
    if (ended === "played") change((one) => ({ ...one, phase: "point", seed }));
  };
  const next = () => {
    if (pass.turn + 1 < turns.length)
      change((one) => ({ ...one, turn: one.turn + 1, phase: "play" }));
    else {
      finish(held, seats, pass);
      drop();
    }
  };
  const stop = () => {
    held.show({ screen: "board" });
    drop();
  };
  return (
    <section class={playing ? "hands-up listening" : "hands-up"}>
      <p class="dim">{handsUp.turn(pass.turn + 1, turns.length)}</p>
      <Heading key={pass.turn}>{headline(words, pass)}</Heading>
      <p class="hint">{hint(handsUp, pass)}</p>
      {pass.turn === 0 && !held.page.sounded && <Cautions bench={ready.bench !== undefined} />}
      {now.check.questions.length > 1 && <BurstCue signal={now.check.signal} playing={playing} />}
      <Table
        label={handsUp.tap}
        elsewhere={handsUp.elsewhere}
        seats={sittingAt(held, ready, seats, pass).map((one) => ({
          ...one,
          pointed:
            ready.bench && one.points.map((place) => answerText(words.language, place)).join(", "),
        }))}
        onTap={(id) => change((one) => tapped(one, id))}
      />
      <div class="foot">
        <PlayOnce first={pass.phase === "play"} muted={muted} turnedUp={turnedUp} onPlay={play} />
        {pass.phase === "point" && (
          <button type="button" class="main" onClick={next}>
            {nextWords(handsUp, seats, pass)}
          </button>
        )}
        {ready.bench === undefined && pass.phase === "play" && <Say held={held} />}
        <button type="button" class="quiet" onClick={stop}>
          {handsUp.stop}
        </button>
      </div>
      <Level held={held} />
    </section>
  );
}

/** Enters what was heard, and goes to the first seat that differs. */
function finish(held: Session, seats: readonly string[], pass: Pass): void {
  const position = seats.find((seat) => pass.differs.has(seat));
  held.enter(...heardBy(seats, pass));
  held.show(position === undefined ? { screen: "board" } : { screen: "position", position });
}

interface PlayProps {
  readonly first: boolean;
  readonly muted: boolean;
  readonly turnedUp: boolean;
  readonly onPlay: () => void;
}

function PlayOnce({ first, muted, turnedUp, onPlay }: PlayProps) {
  const { sounding, asking } = useWords();
  const play = first ? asking.handsUp.play : sounding.again;
  return (
    <button type="button" class={first ? "play" : "play again"} onClick={onPlay}>
      {!muted && <PlaySign />}
      {muted ? mutedWords(sounding, turnedUp) : play}
    </button>
  );
}

const headline = ({ language, asking }: Words, { turn, phase }: Pass): string => {
  const words = turns[turn] && language.checks[turns[turn].check.name];
  return phase === "play" ? (words?.before ?? "") : asking.handsUp.question;
};

type HandsUpWords = Words["asking"]["handsUp"];

function hint(words: HandsUpWords, pass: Pass): string {
  if (pass.phase === "play") return pass.turn === 0 ? words.first : words.point;
  const [first = "", second] = expectedNow(pass).map((place) => words.pointed[place]);
  return second === undefined ? words.one(first) : words.two(first, second);
}

function nextWords(words: HandsUpWords, seats: readonly string[], { turn, differs }: Pass): string {
  if (turn + 1 < turns.length) return differs.size === 0 ? words.allSame : words.on;
  return words.done(seats.length - differs.size, differs.size === 0);
}

/** Everybody at the table. On the bench they point by themselves; else the drawing shows where they should. */
function sittingAt(
  { page }: Session,
  { bench, derived }: Ready,
  seats: readonly string[],
  pass: Pass,
) {
  const check = turns[pass.turn]?.check;
  const pointing = (id: string): readonly string[] => {
    if (pass.phase === "play" || check === undefined) return [];
    if (bench === undefined) return expectedNow(pass);
    const gains = bench.gains(id, derived.evidence.era.course.moves, page.log.length + pass.turn);
    return asHeard(check, pass.seed, pointsAt(check, gains));
  };
  return derived.rig.positions
    .filter(({ id }) => seats.includes(id))
    .map(({ id, name }) => ({ id, name, points: pointing(id), differs: pass.differs.has(id) }));
}
