import { type Advice, shownIn } from "#core/diagnosis/advice.ts";
import type { Chosen } from "#core/diagnosis/choice.ts";
import type { Suspect } from "#core/diagnosis/suspects.ts";
import type { Move } from "#core/rig/moves.ts";
import { build, clientId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { mendText } from "#core/words/fault-text.ts";
import { doText } from "#ui/parts/do-text.ts";
import { faultWords } from "#ui/parts/fault-words.ts";
import { seatName } from "#ui/parts/names.ts";
import { counted, howSure, inHundred, sentence } from "#ui/parts/phrases.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { Ordered } from "./complaint-meant.tsx";
import { Heading } from "./frame.tsx";
import { useHandOn } from "./hands.ts";
import { doneWords, moveFor } from "./move.ts";
import { NotTested } from "./not-tested.tsx";
import { Others } from "./others.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { WayPicture } from "./way-picture.tsx";
import { Why } from "./why.tsx";

type Verdicts = Extract<Advice, { advice: "verdict" }>;
type Props = AtPosition & { readonly verdict: Verdicts };

/** What is wrong: drawn, said, how sure, and the one thing to do now. */
export function Verdict({ held, ready, position, verdict }: Props) {
  useHandOn(held.edges.player);
  const { derived } = ready;
  const standing = derived.standing(position);
  const [leading, ...rest] = shownIn(standing);
  const [fault] = leading ? leading.group.faults : [];
  if (leading === undefined || fault === undefined) return null;
  const { rig } = derived.model;
  return (
    <section class="verdict">
      <Tape yellow>{seatName(rig, position)}</Tape>
      <Heading>{verdict.sure ? sentence(faultWords(derived.model, fault)) : "Not sure."}</Heading>
      <p class="sure">{sureWords(leading, verdict, faultWords(derived.model, fault))}</p>
      <WayPicture
        rig={build(derived.evidence.era.course.state.rig)}
        position={position}
        fault={fault}
      />
      <div class="columns">
        <NextMove
          held={held}
          ready={ready}
          position={position}
          fault={fault}
          best={moveIn(standing.choice)}
        />
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
  { group, probability }: Suspect,
  { sure, fits }: Verdicts,
  text: string,
): string {
  const words = `${howSure(probability)}, ${inHundred(probability)}`;
  const alike = group.faults.length;
  if (sure && alike > 1)
    return `Or one of ${counted(alike - 1, "other", "others")} that no check here tells from it: ${words}.`;
  if (sure) return sentence(words);
  const why = fits
    ? "Nothing on offer is worth its seconds."
    : "Not all that was answered goes together.";
  return `${why} The likeliest: ${text} (${words}).`;
}

/** The move with the lowest expected time to a working rig, where something was weighed. */
function moveIn(choice: Chosen | undefined): Move | undefined {
  const doing = choice?.best?.doing;
  return doing === undefined || doing.do === "ask" ? undefined : doing.move;
}

type MoveProps = AtPosition & { readonly fault: RigFault; readonly best: Move | undefined };

/** One move, begun by volume down, and what to say when it is done: the best that was weighed, else what mends the likeliest. */
function NextMove({ held: { enter, show }, ready, fault, best }: MoveProps) {
  const { model } = ready.derived;
  if (fault.part === clientId) return <Ordered show={show} rig={model.rig} fault={fault} />;
  const { move, done } = best ? { move: best, done: doneWords(best) } : moveFor(fault);
  const text = best ? doText(model, best, false) : mendText(english, model.rig, fault);
  return (
    <div class="next-move">
      <p class="dim">Muted now, for hands on the gear</p>
      <p class="move">
        {english.volumeFirst}. {sentence(text)}
      </p>
      <div class="foot">
        <button type="button" class="main" onClick={() => enter({ entry: "move", move })}>
          {done}
        </button>
        {best && (
          <button type="button" class="say" onClick={() => enter({ entry: "cannot", move })}>
            Not possible here
          </button>
        )}
      </div>
      <p class="dim">Sound comes back 20 dB lower.</p>
      {ready.bench && (
        <button type="button" class="quiet" onClick={() => show({ screen: "curtain" })}>
          lift the curtain
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
  if (group.faults.length < 2) return null;
  return (
    <>
      <h2>{`No check here tells these ${group.faults.length} apart, a repair does`}</h2>
      <ul>
        {group.faults.map((fault) => (
          <li key={fault.id}>{faultWords(ready.derived.model, fault)}</li>
        ))}
      </ul>
    </>
  );
}
