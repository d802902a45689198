import { useEffect, useRef } from "preact/hooks";
import { centredNear, farthest, neverCentred } from "#core/checks/balance.ts";
import { earCheck } from "#core/checks/catalogue.ts";
import { seatName } from "#core/report/names.ts";
import type { Decibels } from "#core/units/units.ts";
import { answerText } from "#core/words/answer-text.ts";
import { BalancePicture } from "#ui/parts/balance-picture.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { AskedByEar } from "./ask-state.ts";
import { benchEars } from "./bench-ears.ts";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import { mutedWords, PlaySign } from "./play.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { usePlace } from "./use-place.ts";

type Props = AtPosition & { readonly asked: AskedByEar };

const check = earCheck("balance");

/** A noise that goes on, pushed to the middle with the arrow keys by whoever listens: how far it was pushed is the finding. */
export function BalanceScreen(props: Props) {
  const { language, asking } = useWords();
  const { before, questions } = language.checks.balance;
  const { held, ready, asked } = props;
  const { world, edges } = held;
  const { player } = edges;
  usePlace(held, asked.position, check.signal);
  useEffect(() => player.balance(0), [player]);
  const answer = (given: readonly string[]) =>
    held.enter({ entry: "finding", finding: { asked, results: [given] } });
  return (
    <section class="look balance">
      <Tape>{seatName(ready.derived.rig, asked.position)}</Tape>
      <Heading>{world.playing ? (questions[0] ?? before) : before}</Heading>
      <p class="hint">{asking.balance.hint}</p>
      <BalancePicture balance={world.balance} farthest={farthest} />
      <Push held={held} />
      <div class="foot">
        <StartStop {...props} />
        {world.playing && (
          <>
            <button type="button" class="main" onClick={() => answer(centredNear(world.balance))}>
              {asking.balance.middle}
            </button>
            <button type="button" class="step" onClick={() => answer([neverCentred])}>
              {answerText(language, neverCentred)}
            </button>
          </>
        )}
        <button
          type="button"
          class="quiet"
          onClick={() => answer(check.questions[0]?.answers ?? [])}
        >
          {asking.cannotTell}
        </button>
      </div>
      <Level held={held} />
    </section>
  );
}

/** The slide: it has the focus once the noise plays, so that the arrow keys push at once. */
function Push({ held: { world, edges } }: Pick<Props, "held">) {
  const words = useWords().asking.balance;
  const slide = useRef<HTMLInputElement>(null);
  const { playing, balance } = world;
  useEffect(() => {
    if (playing) slide.current?.focus();
  }, [playing]);
  return (
    <input
      ref={slide}
      class="push"
      type="range"
      min={-farthest}
      max={farthest}
      step="1"
      value={balance}
      aria-disabled={!playing}
      aria-label={words.push}
      aria-valuetext={pushWords(words, balance)}
      onInput={({ currentTarget }) => {
        if (playing) edges.player.balance(Number(currentTarget.value));
        else currentTarget.value = String(balance);
      }}
    />
  );
}

const pushWords = (words: Words["asking"]["balance"], balance: Decibels): string => {
  if (balance === 0) return words.asItIs;
  return balance > 0 ? words.rightUp(balance) : words.leftUp(-balance);
};

function StartStop({ held, ready: { bench, derived }, asked }: Props) {
  const { sounding } = useWords();
  const { world, edges, page, change } = held;
  const { player } = edges;
  const press = () => {
    if (world.playing) return player.silence();
    if (world.muted) return player.handOff();
    change((one) => ({ ...one, sounded: true }));
    const through = benchEars(bench, derived, asked.position, page.log.length);
    void player.play(check.signal, 0, { through, loop: true, balanced: true });
  };
  return (
    <button type="button" class="play" onClick={press}>
      {!world.muted && <PlaySign />}
      {startWords(sounding, world)}
    </button>
  );
}

function startWords(
  words: Words["sounding"],
  { playing, muted, turnedUp }: Props["held"]["world"],
): string {
  if (playing) return words.stop;
  return muted ? mutedWords(words, turnedUp) : words.play;
}
