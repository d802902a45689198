import { heardIn, loudnessOf } from "#core/level/heard.ts";
import { placeName, seatName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { LevelsAdvice } from "./levels-advice.tsx";
import { LevelsChain } from "./levels-chain.tsx";
import { LevelsHiss } from "./levels-hiss.tsx";
import { LevelsInstead } from "./levels-instead.tsx";
import { LevelsNumbers } from "./levels-numbers.tsx";
import { LevelsOneMore } from "./levels-one-more.tsx";
import { LevelsSeats } from "./levels-seats.tsx";
import { LevelsTime } from "./levels-time.tsx";
import type { LevelsView } from "./levels-view.ts";
import { stepped } from "./stepped.ts";
import { UndoSteps } from "./undo-steps.tsx";
import { type AtLevels, useLevels } from "./use-levels.ts";
import type { Held } from "./use-page.ts";

/** How loud and how hissy it is at a position, as a picture whose knobs turn. */
export function LevelsScreen({ held, view }: { readonly held: Held; readonly view: LevelsView }) {
  const at = useLevels(held, view);
  const { levels } = useWords();
  if (at === undefined)
    return (
      <section class="levels">
        <Heading>{levels.link}</Heading>
        <p>{levels.nothingFed}</p>
      </section>
    );
  return (
    <section class="levels">
      <Head at={at} />
      <LevelsChain at={at} />
      <LevelsNumbers at={at} />
      <LevelsAdvice at={at} />
      <LevelsHiss at={at} />
      <LevelsInstead at={at} />
      <LevelsTime at={at} />
      <LevelsOneMore at={at} />
      <LevelsSeats at={at} />
    </section>
  );
}

/** What there is at the ears, in plain words, and how sure that is. */
function Head({ at }: { readonly at: AtLevels }) {
  const { levels, figures } = useWords();
  const { level, hiss } = at.told;
  const whole = (value: number) => figures.fixed(value, 0);
  return (
    <header class="levels-head">
      <div>
        <Tape>{seatName(at.rig, at.position)}</Tape>
        <Heading>{levels.headline[loudnessOf(level.value)](whole(level.value))}</Heading>
        <p class="sub">{levels.hissIs[heardIn(hiss.value) ?? "nowhere"]}</p>
        <Unsure at={at} />
      </div>
      <Steps at={at} />
    </header>
  );
}

/** Less is no spread worth a word, and less of a peak is not missed; decibels. */
const [narrow, heard] = [3, 0.5];

function Unsure({ at: { told, way, rig, noticed } }: { readonly at: AtLevels }) {
  const { levels, figures, language } = useWords();
  const { low, high } = told.level;
  const cut = told.now.places.find(({ headroom }) => headroom < -heard);
  const whole = (value: number) => figures.fixed(Math.max(0, value), 0);
  return (
    <>
      {cut && (
        <p class="levels-cut">
          <Tape yellow>
            {sentence(
              levels.cutAt(placeName(language, rig, cut.part), figures.fixed(-cut.headroom, 0)),
            )}
          </Tape>
        </p>
      )}
      {high - low > narrow && (
        <p class="note">{levels.between(whole(low), whole(high), way.unknowns.length)}</p>
      )}
      {noticed > 0 && <p class="note">{levels.noticed(noticed)}</p>}
    </>
  );
}

function Steps({ at: { held } }: { readonly at: AtLevels }) {
  const { page, change, edges } = held;
  const step = (way: "undone" | "redone") => change((one) => stepped(one, way, edges.now()));
  return <UndoSteps log={page.log} step={step} />;
}
