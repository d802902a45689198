import type { Bench } from "#core/bench/bench.ts";
import type { Group } from "#core/diagnosis/groups.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { inHundred, sentence } from "#core/report/phrases.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { holding, type Log } from "#core/session/log.ts";
import { faultById } from "#ui/parts/fault-by-id.ts";
import { effectAt } from "#ui/parts/fault-effect.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
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
  const words = useWords();
  const { language, verdict } = words;
  const { rig } = derived.model;
  const hidden = bench.hidden;
  const position =
    rig.positions.find(({ id }) => effectAt(rig, id, hidden) !== "straight") ?? rig.positions[0];
  return (
    <section class="curtain">
      <p class="dim">{verdict.curtain.number(bench.seed)}</p>
      <Heading>{sentence(faultWords(language, derived.model, hidden))}</Heading>
      <p class="sure">{namedWords(words, derived, held.page.log, bench)}</p>
      {position && <WayPicture rig={rig} position={position.id} fault={hidden} />}
      <div class="foot">
        <button type="button" class="main" onClick={() => held.bench()}>
          {verdict.curtain.another}
        </button>
      </div>
    </section>
  );
}

/** Whether the page had it right, now or before somebody moved something. */
function namedWords(
  { language, verdict: { curtain } }: Words,
  derived: Derived,
  log: Log,
  bench: Bench,
): string {
  const { hidden } = bench;
  if (!bench.there(derived.evidence.era.course.moves)) return curtain.setRight;
  if (isAside(derived, hidden)) return curtain.aside;
  const entries = holding(log);
  const before = entries.flatMap(({ entry }, at) =>
    entry === "move" ? [derive(entries.slice(0, at))] : [],
  );
  if ([...before, derived].some((one) => one && names(one, hidden))) return curtain.named;
  const [suspect] = derived.rig.positions
    .flatMap(({ id }) => derived.standing(id).suspects)
    .filter(({ group }) => isIn(group, hidden))
    .sort((a, b) => b.probability - a.probability);
  return curtain.notNamed(inHundred(language, suspect?.probability ?? 0));
}

/** Whether no way passes the fault any more, though it is still there. */
const isAside = ({ rig, model, evidence: { era } }: Derived, { id }: RigFault): boolean => {
  const fault = faultById(model, id);
  return (
    fault !== undefined && rig.positions.every(({ id: seat }) => !era.onTheWay(seat).has(fault))
  );
};

const isIn = ({ faults }: Group, { id }: RigFault): boolean =>
  faults.some((fault) => fault.id === id);

/** Whether a verdict at some position names a fault, be it as one of several that nothing tells apart. */
const names = ({ rig, state, standing }: Derived, hidden: RigFault): boolean =>
  rig.positions.some(({ id }) => {
    const [first] = state(id) === "wrong" ? standing(id).suspects : [];
    return first !== undefined && isIn(first.group, hidden);
  });
