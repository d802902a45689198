import type { Bench } from "#core/bench/bench.ts";
import { survives } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Derived } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";
import { effectAt } from "#ui/parts/fault-effect.ts";
import { inHundred, sentence } from "#ui/parts/phrases.ts";
import { Heading } from "./frame.tsx";
import type { Session } from "./use-session.ts";
import { WayPicture } from "./way-picture.tsx";

interface Props {
  readonly held: Session;
  readonly derived: Derived;
  readonly bench: Bench;
}

/** Behind the curtain of the bench: what was wrong all the time. */
export function Curtain({ held, derived, bench }: Props) {
  const { rig } = derived.model;
  const hidden = bench.hidden;
  const position =
    rig.positions.find(({ id }) => effectAt(rig, id, hidden) !== "straight") ?? rig.positions[0];
  return (
    <section class="curtain">
      <p class="dim">{`Behind the curtain of rig number ${bench.seed}`}</p>
      <Heading>{sentence(faultText(english, rig, hidden))}</Heading>
      <p class="sure">{namedWords(derived, hidden)}</p>
      {position && <WayPicture rig={rig} position={position.id} fault={hidden} />}
      <div class="foot">
        <button type="button" class="main" onClick={() => held.bench()}>
          Another rig with something wrong
        </button>
      </div>
    </section>
  );
}

/** Whether the page had it right. */
function namedWords(derived: Derived, hidden: RigFault): string {
  const { model, evidence, rig } = derived;
  if (!evidence.moves.every((move) => survives(hidden, move)))
    return "You set it right: it is gone from the rig.";
  const standings = rig.positions.map(({ id }) => ({ id, ...derived.standing(id) }));
  const named = standings.find(
    ({ id, suspects }) =>
      derived.state(id) === "wrong" &&
      suspects[0]?.group.faults.some((fault) => fault.id === hidden.id),
  );
  if (named !== undefined) return "It was among those named.";
  const [suspect] = standings
    .flatMap(({ suspects }) => suspects)
    .filter(({ group }) => group.faults.some((fault) => fault.id === hidden.id));
  const heard = model.rig.positions.some(({ id }) => derived.state(id) !== "not heard");
  if (suspect === undefined || !heard) return "It was not named.";
  return `It was not named yet: ${inHundred(suspect.probability)} so far.`;
}
