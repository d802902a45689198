import { type Verdict as Said, type Standing, shownIn } from "#core/diagnosis/advice.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import { mendWords } from "#core/report/do-text.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { seatName } from "#core/report/names.ts";
import { howSure, inHundred, sentence } from "#core/report/phrases.ts";
import { unsureWords } from "#core/report/reason-words.ts";
import { build, clientId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { MendPicture } from "#ui/parts/mend-picture.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Ordered } from "./complaint-meant.tsx";
import { Heading } from "./frame.tsx";
import { useHandOn } from "./hands.ts";
import { doneWords } from "./move.ts";
import { NotTested } from "./not-tested.tsx";
import { Others } from "./others.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { WayPicture } from "./way-picture.tsx";
import { Why } from "./why.tsx";

type Props = AtPosition & { readonly verdict: Said };

/** What is wrong: drawn, said, how sure, and the one thing to do now. */
export function Verdict({ held, ready, position, verdict }: Props) {
  const words = useWords();
  const { language } = words;
  useHandOn(held.edges.player);
  const { derived } = ready;
  const standing = derived.standing(position);
  const [leading, ...rest] = shownIn(standing);
  const [fault] = leading ? leading.group.faults : [];
  if (leading === undefined || fault === undefined) return null;
  const { rig } = derived.model;
  const text = faultWords(language, derived.model, fault);
  return (
    <section class="verdict">
      <Tape yellow>{seatName(rig, position)}</Tape>
      <Heading>{verdict.sure ? sentence(text) : words.verdict.notSure}</Heading>
      <p class="sure">{sureWords(words, standing, verdict, leading, text)}</p>
      <WayPicture
        rig={build(derived.evidence.era.course.state.rig)}
        position={position}
        fault={fault}
      />
      <div class="columns">
        <NextMove held={held} ready={ready} position={position} fault={fault} verdict={verdict} />
        <div class="beside">
          <Possibilities leading={leading} ready={ready} />
          <Others leading={leading} rest={rest} derived={derived} position={position} />
          <Why derived={derived} group={leading.group} />
          <NotTested derived={derived} position={position} />
        </div>
      </div>
    </section>
  );
}

function sureWords(
  { language, verdict: words }: Words,
  { choice }: Standing,
  verdict: Said,
  { group, probability }: Suspect,
  text: string,
): string {
  const odds = words.odds(howSure(language, probability), inHundred(language, probability));
  const alike = group.faults.length;
  if (verdict.sure && alike > 1) return words.orOthers(alike - 1, odds);
  if (verdict.sure) return sentence(odds);
  return words.likeliest(unsureWords(language, verdict, choice), text, odds);
}

type MoveProps = AtPosition & { readonly fault: RigFault; readonly verdict: Said };

/** One move, begun by volume down, and what to say when it is done. */
function NextMove({ held: { enter, show }, ready, fault, verdict: { mend } }: MoveProps) {
  const { language, doing, verdict } = useWords();
  const { model } = ready.derived;
  const wide = useWide(42);
  if (fault.part === clientId) return <Ordered show={show} rig={model.rig} fault={fault} />;
  return (
    <div class="next-move">
      <p class="dim">{verdict.muted}</p>
      <p class="move">
        {language.volumeFirst}. {sentence(mendWords(language, model, mend?.move, fault))}
      </p>
      <div class="foot">
        {mend && (
          <>
            <button
              type="button"
              class="main"
              onClick={() => enter({ entry: "move", move: mend.move })}
            >
              {doneWords(doing, mend.move)}
            </button>
            <button
              type="button"
              class="say"
              onClick={() => enter({ entry: "cannot", move: mend.move })}
            >
              {doing.notPossible}
            </button>
          </>
        )}
      </div>
      <p class="dim">{doing.comesBack}</p>
      <MendPicture
        rig={model.rig}
        fault={fault}
        place={mend && "place" in mend.move ? mend.move.place : undefined}
        wide={wide}
        label={faultWords(language, model, fault)}
      />
      {ready.bench && (
        <button type="button" class="quiet" onClick={() => show({ screen: "curtain" })}>
          {doing.curtain}
        </button>
      )}
    </div>
  );
}

/** The members of a group that nothing on offer tells apart. */
function Possibilities({
  leading: { group },
  ready,
}: Pick<AtPosition, "ready"> & { readonly leading: Suspect }) {
  const { language, verdict } = useWords();
  if (group.faults.length < 2) return null;
  return (
    <>
      <h2>{verdict.alike(group.faults.length)}</h2>
      <ul>
        {group.faults.map((fault) => (
          <li key={fault.id}>{faultWords(language, ready.derived.model, fault)}</li>
        ))}
      </ul>
    </>
  );
}
