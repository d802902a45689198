import { positionWanting } from "#core/drawing/names.ts";
import { type WantedFeed, wantedFeeds } from "#core/rig/rig.ts";
import { holding, type Log, rigIn } from "#core/session/log.ts";
import { afterThis } from "#core/session/where.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { AtPosition } from "./position-screen.tsx";

interface Props extends AtPosition {
  /** The position whose ears are asked, for the one in hand. */
  readonly here: string;
}

/** What may be otherwise: nobody has time for the position in hand, nobody is where it is asked, or what is wanted there is no stereo. */
export function SeatOptions({ held, ready: { derived }, position, here }: Props) {
  const { round } = useWords();
  const next = afterThis(derived, position);
  const skip = () => next && held.show({ screen: "position", position: next.id });
  const absent = () => {
    held.enter({ entry: "absent", position: here });
    // Whoever comes there later was told nothing.
    held.change((one) => (one.told === here ? { ...one, told: undefined } : one));
    if (here !== position) return;
    held.show(next ? { screen: "position", position: next.id } : { screen: "board" });
  };
  return (
    <details class="otherwise">
      <summary>{round.otherwise}</summary>
      <div class="foot">
        {next && (
          <button type="button" class="say" onClick={skip}>
            {round.skip(next.name)}
          </button>
        )}
        <button type="button" class="say" onClick={absent}>
          {round.absent}
        </button>
      </div>
      {held.page.seed === undefined && <Wanted held={held} position={here} />}
    </details>
  );
}

/**
 * What is wanted at a position. It corrects the drawing: what was meant all along is no fault. A rig to try hides its fault, which a new
 * drawing would exchange for another.
 */
function Wanted({ held, position }: Pick<AtPosition, "held" | "position">) {
  const { round } = useWords();
  const now = wantedIn(held, position);
  return (
    <div class="wanted">
      <p class="dim" aria-hidden="true">
        {round.wants}
      </p>
      <Roving label={round.wants} kind="foot">
        {[undefined, ...wantedFeeds].map((wants) => (
          <button
            key={wants ?? "stereo"}
            type="button"
            class="say"
            aria-pressed={wants === now}
            onClick={() => want(held, position, wants)}
          >
            {wants === undefined ? round.stereo : round.feeds[wants]}
          </button>
        ))}
      </Roving>
    </div>
  );
}

/** That something else than stereo is wanted at a position, over its question; and a way to take it back. */
export function WantedSo({ held, position }: Pick<AtPosition, "held" | "position">) {
  const { round } = useWords();
  const now = wantedIn(held, position);
  if (now === undefined) return null;
  return (
    <p class="wanted-so">
      {round.wantedSo[now]}{" "}
      <button type="button" class="quiet" onClick={() => want(held, position, undefined)}>
        {round.stereoAfterAll}
      </button>
    </p>
  );
}

const wantedIn = (
  { page }: Pick<AtPosition["held"], "page">,
  position: string,
): WantedFeed | undefined => rigIn(page.log)?.positions.find(({ id }) => id === position)?.wants;

function want(
  { page, enter }: AtPosition["held"],
  position: string,
  wants: WantedFeed | undefined,
): void {
  const rig = rigIn(page.log);
  const edited = rig && positionWanting(rig, position, wants);
  if (edited && "rig" in edited && edited.rig !== rig) enter({ entry: "drawing", rig: edited.rig });
}

/** A position where nobody is. */
export function Absent({ held, position }: Pick<AtPosition, "held" | "position">) {
  const { round } = useWords();
  const entry = absentSince(held.page.log, position);
  const name = rigIn(held.page.log)?.positions.find(({ id }) => id === position)?.name ?? position;
  return (
    <section class="absent">
      <Tape>{name}</Tape>
      <Heading>{round.absentNow}</Heading>
      <p>{round.absentMore}</p>
      {entry && (
        <button
          type="button"
          class="main"
          onClick={() => held.enter({ entry: "taken back", taken: entry })}
        >
          {round.back}
        </button>
      )}
    </section>
  );
}

/** The entry that says so. */
const absentSince = (log: Log, position: string): string | undefined =>
  holding(log).findLast((one) => one.entry === "absent" && one.position === position)?.id;
