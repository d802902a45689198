import { inHundred, sentence } from "#core/report/phrases.ts";
import type { Rig } from "#core/rig/rig.ts";
import { build } from "#core/rig/rig.ts";
import type { Derived } from "#core/session/derive.ts";
import { rigIn } from "#core/session/log.ts";
import { whereText } from "#core/words/fault-text.ts";
import { BoardPicture } from "#ui/parts/board-picture.tsx";
import { boardShape } from "#ui/parts/board-shape.ts";
import { effectBriefly } from "#ui/parts/fault-effect.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { letterScale, useWide } from "#ui/parts/use-wide.ts";
import { useFirstWords, useWords, type Words } from "#ui/words/use-words.ts";
import { CameFrom } from "./came-from.tsx";
import { Cautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { seatsToPass } from "./hands-up-state.ts";
import { LastAnswer } from "./last-answer.tsx";
import { leadIn } from "./prove-said.ts";
import {
  nextSeat,
  type Seat,
  seatsOf,
  trunkOf,
  trunkSound,
  trunkTrouble,
  whereTo,
} from "./seat-state.ts";
import { ToLevels } from "./to-levels.tsx";
import { ToTheRig } from "./to-the-rig.tsx";
import type { Session } from "./use-session.ts";

/** Every position where it hangs on the rig, and how it stands. */
export function Board({ held }: { readonly held: Session }) {
  const { page, ready, show } = held;
  const words = useWords();
  const { board, doing, sheet } = words;
  const { rigName } = useFirstWords().start;
  const rig = rigIn(page.log);
  if (rig === undefined) return null;
  const derived = ready?.derived;
  const seats = derived ? seatsOf(words, derived) : unheard(board, rig);
  const heard = seats.some(({ state }) => state !== "not heard" && state !== "absent");
  return (
    <div class="board-screen">
      <CameFrom
        held={held}
        derived={derived}
        came={page.view.screen === "board" ? page.view.came : undefined}
      />
      <Heading>{headline(board, seats)}</Heading>
      <p class="sub">
        {page.seed === undefined ? rigName(rig.name) : board.noGear}
        {derived && heard && rig.positions.length > 1 ? soundWords(words, derived) : ""}
      </p>
      {!heard && !page.sounded && <Cautions bench={page.seed !== undefined} />}
      <Rigging
        rig={rig}
        derived={derived}
        seats={seats}
        open={(position) => show({ screen: "position", position })}
      />
      <div class={seats.length < 6 ? "foot" : "foot tucked"}>
        <Next seats={seats} derived={derived} show={show} />
        {ready?.bench && heard && (
          <button type="button" class="quiet" onClick={() => show({ screen: "curtain" })}>
            {doing.curtain}
          </button>
        )}
        <LastAnswer held={held} />
        <ToTheRig held={held} />
        <ToLevels held={held} />
        <button type="button" class="quiet" onClick={() => show({ screen: "start" })}>
          {board.anotherRig}
        </button>
        {leadIn(rig) === undefined && (
          <button type="button" class="quiet" onClick={() => show({ screen: "sheet" })}>
            {sheet.open}
          </button>
        )}
      </div>
    </div>
  );
}

type BoardWords = Words["board"];

const unheard = ({ states }: BoardWords, rig: Rig): readonly Seat[] =>
  rig.positions.map(({ id, name }) => ({
    id,
    name,
    state: "not heard",
    words: states["not heard"],
    needsYou: false,
  }));

function headline(words: BoardWords, seats: readonly Seat[]): string {
  const healthy = seats.filter(({ state }) => state === "healthy").length;
  const wrong = seats.filter(({ needsYou }) => needsYou).length;
  const there = seats.filter(({ state }) => state !== "absent").length;
  if (there === 0) return words.nobody;
  if (healthy + wrong === 0) return words.toCheck(there);
  if (healthy === seats.length) return healthy === 1 ? words.oneHealthy : words.allHealthy(healthy);
  const needs = wrong === 0 ? "" : `, ${words.needYou(wrong)}`;
  return `${words.someHealthy(healthy, there)}${needs}`;
}

/** What all positions share, so far as it seems sound. */
function soundWords({ language, board }: Words, derived: Derived): string {
  const sound = trunkSound(derived);
  return sound < 0.5 ? "" : ` · ${board.trunkSound(inHundred(language, sound))}`;
}

interface NextProps {
  readonly seats: readonly Seat[];
  readonly derived: Derived | undefined;
  readonly show: Session["show"];
}

/** Where to go next: to one seat or to all at once, the quicker of the two large. */
function Next({ seats, derived, show }: NextProps) {
  const { board } = useWords();
  const next = nextSeat(seats, derived);
  const where = derived && whereTo(derived);
  const atOnce = where?.go === "all at once";
  const together = derived !== undefined && seatsToPass(derived).length > 0 && (
    <button
      type="button"
      class={atOnce ? "main" : "say"}
      onClick={() => show({ screen: "hands up" })}
    >
      {board.allAtOnce}
    </button>
  );
  return (
    <>
      {atOnce && together}
      {next && (
        <button
          type="button"
          class={atOnce ? "say" : "main"}
          onClick={() => show({ screen: "position", position: next.id })}
        >
          {nextWords(board, next)}
        </button>
      )}
      {where && where.go !== "nowhere" && where.because !== "it is the next" && (
        <p class="dim">{sentence(board.because[where.because])}</p>
      )}
      {!atOnce && together}
    </>
  );
}

function nextWords(words: BoardWords, { name, state }: Seat): string {
  if (state === "not heard") return words.listenAt(name);
  return state === "begun" ? words.goOnAt(name) : words.whatIsWrongAt(name);
}

interface RiggingProps {
  readonly rig: Rig;
  readonly derived: Derived | undefined;
  readonly seats: readonly Seat[];
  readonly open: (position: string) => void;
}

function Rigging({ rig, derived, seats, open }: RiggingProps) {
  const { language, board } = useWords();
  const wide = useWide(76);
  const built = derived?.model.rig ?? build(rig);
  const trunk = trunkOf(built);
  const shape = boardShape(wide, trunk.length, seats.length, letterScale());
  const trouble = derived && trunkTrouble(derived, seats);
  return (
    <>
      {trouble && (
        <p class="trunk-trouble">
          <Tape yellow>{whereText(language, built, trouble.fault)}</Tape>{" "}
          {sentence(effectBriefly(language, trouble.effect) ?? board.beforeTheyPart)}
        </p>
      )}
      <div class={wide ? "rigging" : "rigging narrow"}>
        <BoardPicture
          shape={shape}
          trunk={trunk}
          wrong={trouble}
          branches={seats.map(({ state, wrong }) => ({
            dim: state === "not heard" || state === "absent",
            ...(wrong && !wrong.onTrunk ? { effect: wrong.effect } : {}),
          }))}
        />
        <ol style={{ paddingTop: `${shape.top}px`, "--lanes": `${shape.width}px` }}>
          {seats.map((seat) => (
            <li key={seat.id} style={{ height: `${shape.row}px` }}>
              <SeatButton seat={seat} open={open} />
            </li>
          ))}
        </ol>
      </div>
    </>
  );
}

function SeatButton({
  seat,
  open,
}: {
  readonly seat: Seat;
  readonly open: (position: string) => void;
}) {
  return (
    <button
      type="button"
      aria-label={`${seat.name}, ${seat.words}`}
      class={`seat ${seat.state.replace(" ", "-")}`}
      onClick={() => open(seat.id)}
    >
      <Tape yellow={seat.needsYou}>{seat.name}</Tape>
      <span class="state">
        {seat.state === "healthy" && <Tick />}
        {seat.words}
      </span>
    </button>
  );
}
