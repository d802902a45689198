import type { Finding, MeasuredGains } from "#core/checks/finding.ts";
import type { Method } from "#core/proving/choice.ts";
import { leadId, provedAt } from "#core/proving/lead-rig.ts";
import { isLoose, meterView } from "#core/proving/meter-view.ts";
import { type Next, type Proof, proofOf } from "#core/proving/proof.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import type { BuiltRig, Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { size } from "#core/units/complex.ts";
import type { Random } from "#core/units/random.ts";
import { begun, moved } from "#tests/walkthrough/world.ts";

/** A log that draws a rig and says nothing else yet. */
export const drawn = (rig: Rig): Log => add([], { entry: "drawing", rig }, 0);

/** All that follows from a log. Throws on one that draws nothing. */
export function derived(log: Log): Derived {
  const all = derive(log);
  if (all === undefined) throw new Error("the log draws no rig");
  return all;
}

/** The faults of a rig's lead itself, those of its plugs in their sockets left out. */
export function ownFaults({ model }: Derived): readonly RigFault[] {
  const own = model.rig.part(leadId).faults;
  return model.root.faults.filter(
    (fault) =>
      fault.part === leadId && own.some(({ name, at }) => name === fault.name && at === fault.at),
  );
}

/** What stands there now, of what comes and goes. */
const standing = (faults: readonly RigFault[], random: Random): readonly RigFault[] =>
  faults.filter(({ comesAndGoes }) => !comesAndGoes || random() < 0.5);

/** A bell curve of one, from two uniform numbers. */
const normal = (random: Random): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

const noise = 0.002;

/** What an instrument measures at the end of a lead, with some noise, against the largest gain of a healthy one. */
function measured(rig: BuiltRig, planted: readonly RigFault[], random: Random): Finding {
  const largest = Math.max(...earMatrix(rig, provedAt, []).flat().map(size));
  const gains = earMatrix(rig, provedAt, standing(planted, random))
    .flat()
    .map(({ re, im }) => [
      re / largest + noise * normal(random),
      im / largest + noise * normal(random),
    ]);
  return {
    asked: { check: "matrix", position: provedAt },
    gains: gains as unknown as MeasuredGains,
    error: noise,
  };
}

type Reading = Extract<Next, { next: "read" }>["reading"];

/** What a meter shows, and whether it changes when somebody bends the lead. */
function read(
  rig: BuiltRig,
  planted: readonly RigFault[],
  { asked, bend }: Reading,
  random: Random,
): Finding {
  const shown = meterView(rig).shown(planted, { from: asked.from, to: asked.to });
  const ohms = shown[Math.floor(random() * shown.length)] ?? 0;
  const bent = isLoose(shown) ? "changes" : "steady";
  return { asked, ...(ohms < 1e6 ? { ohms } : {}), ...(bend ? { bent } : {}) };
}

/** How a lead was proved. */
export interface Proved {
  readonly proof: Proof;
  /** A move on the way took away what was planted. */
  readonly mended: boolean;
  readonly steps: number;
  readonly log: Log;
  readonly derived: Derived;
}

const most = 40;

/** Proves a lead with some faults planted, by a meter or an instrument: whatever is asked for is done. */
export function prove(
  log: Log,
  by: Exclude<Method, "ear">,
  planted: readonly RigFault[],
  random: Random,
): Proved {
  let now = log;
  let world = begun({ rig: derived(log).model.drawn, planted, slips: 0, random });
  for (let steps = 0; ; steps++) {
    const all = derived(now);
    const proof = proofOf(all, by);
    const { next } = proof;
    const mended = world.there.length < planted.length;
    if (proof.state !== "going on" || steps >= most)
      return { proof, steps, mended, log: now, derived: all };
    if (next?.next === "do") {
      world = moved(world, next.move);
      now = add(now, { entry: "move", move: next.move }, 0);
    } else {
      const finding = found(all.model.rig, world.there, proof, random);
      now = add(now, { entry: "finding", finding }, 0);
    }
  }
}

function found(
  rig: BuiltRig,
  planted: readonly RigFault[],
  { next }: Proof,
  random: Random,
): Finding {
  if (next?.next === "read") return read(rig, planted, next.reading, random);
  if (next?.next === "ask" && next.asked.check === "matrix") return measured(rig, planted, random);
  if (next?.next === "ask" && next.asked.check === "look") {
    const { place } = next.asked;
    const seen = planted.find((fault) => fault.seen && fault.place === place);
    return { asked: next.asked, results: [[seen?.id ?? "as it should be"]] };
  }
  throw new Error(`nobody does this on a bench: ${JSON.stringify(next)}`);
}
