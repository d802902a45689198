import type { Advice } from "#core/diagnosis/advice.ts";
import { handAt } from "#core/diagnosis/hands.ts";
import { doText } from "#core/report/do-text.ts";
import { seatName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import type { Move } from "#core/rig/moves.ts";
import { build, wornAt } from "#core/rig/rig.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { useHandOn } from "./hands.ts";
import { doneWords, lookFor } from "./move.ts";
import type { AtPosition } from "./position-screen.tsx";
import { WayPicture } from "./way-picture.tsx";

type Props = AtPosition & {
  readonly doing: Pick<Extract<Advice, { advice: "do" }>, "move" | "cures">;
  /** Said instead of 'not possible here', where it is nobody's advice but a choice. */
  readonly onLeave?: () => void;
};

/** One move, to cure or to see what changes; then it is heard again. */
export function DoScreen({ held, ready, position, doing: { move, cures }, onLeave }: Props) {
  const { language, doing: words } = useWords();
  useHandOn(held.edges.player);
  const { derived, bench } = ready;
  const now = build(derived.evidence.era.course.state.rig);
  const back = isTurnedBack(derived.evidence.era.course.state.rig.positions, move);
  const seen = lookFor(language, derived, position, move);
  return (
    <section class="do">
      <Tape yellow>{seatName(derived.rig, position)}</Tape>
      <Heading>{sentence(doText(language, derived.model, move, back))}</Heading>
      <p>
        {`${language.volumeFirst}. `}
        <span class="dim">{words.muted}</span>
      </p>
      <WayPicture rig={now} position={position} place={handAt(now, position, move)} />
      {seen.length > 0 && <p class="look-for">{words.lookFor(seen)}</p>}
      <div class="next-move">
        <p class="what-for">{back ? words.asItWas : purpose(words, cures)}</p>
        <div class="foot">
          <button type="button" class="main" onClick={() => held.enter({ entry: "move", move })}>
            {doneWords(words, move)}
          </button>
          {!back && (
            <button
              type="button"
              class="say"
              onClick={onLeave ?? (() => held.enter({ entry: "cannot", move }))}
            >
              {onLeave ? words.leaveAside : words.notPossible}
            </button>
          )}
        </div>
        <p class="dim">{words.comesBack}</p>
        {bench && (
          <button type="button" class="quiet" onClick={() => held.show({ screen: "curtain" })}>
            {words.curtain}
          </button>
        )}
      </div>
      <MeOrGear move={move} back={back} worn={kindWorn(now, position)} />
    </section>
  );
}

const purpose = ({ mayCure, seeWhat }: Words["doing"], cures: boolean): string =>
  cures ? mayCure : seeWhat;

const isTurnedBack = (
  positions: readonly { readonly id: string; readonly turned?: boolean }[],
  move: Move,
): boolean =>
  move.move === "turned round" &&
  positions.some(({ id, turned }) => id === move.position && turned === true);

const kindWorn = (rig: ReturnType<typeof build>, position: string) => {
  const part = wornAt(rig, position);
  return { part, oneListener: rig.part(part).oneListener === true };
};

interface MeOrGearProps {
  readonly move: Move;
  readonly back: boolean;
  readonly worn: ReturnType<typeof kindWorn>;
}

/** A move that tells the listener from the gear says so, and diagnoses no ear. */
function MeOrGear({ move, back, worn: { part, oneListener } }: MeOrGearProps) {
  const { headphones, inEars } = useWords().language.complaints.meOrGear;
  const turns = move.move === "turned round" && !back;
  const lends = move.move === "known good in" && move.part === part && oneListener;
  const listens = move.move === "replaced" && move.place.endsWith(": listener");
  if (!turns && !lends && !listens) return null;
  return <p class="me-or-gear">{oneListener ? inEars : headphones}</p>;
}
