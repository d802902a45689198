import { expect, test } from "vitest";
import { provable } from "#core/proving/ends.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import { meterView } from "#core/proving/meter-view.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Log } from "#core/session/log.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { derived, drawn, ownFaults, prove } from "./prover.ts";

const each = 4;

/** Two different faults that can both be there, drawn by their odds. */
function drawTwo(faults: readonly RigFault[], random: () => number): readonly RigFault[] {
  const steady = faults.filter(({ comesAndGoes }) => !comesAndGoes);
  const all = steady.reduce((sum, { weight }) => sum + weight, 0);
  const draw = (): RigFault | undefined => {
    let left = random() * all;
    return steady.find(({ weight }) => {
      left -= weight;
      return left <= 0;
    });
  };
  for (;;) {
    const [one, other] = [draw(), draw()];
    if (one !== undefined && other !== undefined && one.slot !== other.slot) return [one, other];
  }
}

const most = 4;

/** Proves a lead, mends what is named of what is there, and proves it again, until it is called healthy. */
function mendedAndProved(log: Log, planted: readonly RigFault[], random: Random) {
  const view = meterView(derived(log).model.rig);
  let left = planted;
  for (let rounds = 1; ; rounds++) {
    const { proof } = prove(log, "meter", left, random);
    const named = left.filter((fault) => proof.alike.includes(fault));
    if (proof.state !== "wrong" || named.length === 0 || rounds === most)
      return { rounds, left, sound: view.all(left) === view.all([]), state: proof.state, proof };
    left = left.filter((fault) => !named.includes(fault));
  }
}

test("two faults at once, by a meter: one after the other is named and mended", {
  timeout: 120_000,
}, () => {
  const random = seeded(2026);
  const walks = provable
    .filter((kind) => kind !== "TS lead")
    .flatMap((kind) => {
      const log = drawn(leadRig({ kind, by: "meter" }));
      const faults = ownFaults(derived(log));
      return Array.from({ length: each }, () => {
        const planted = drawTwo(faults, random);
        return {
          id: `${kind}: ${planted.map(({ id }) => id)}`,
          ...mendedAndProved(log, planted, random),
        };
      });
    });
  const well = walks.filter(({ sound, state }) => sound && state === "healthy");
  const lost = walks.filter(({ sound }) => !sound);
  const falsely = walks.filter(({ sound, state }) => !sound && state === "healthy");
  console.log(
    `two faults: ${walks.length}, both mended ${well.length}, falsely healthy ${falsely.length}\n${lost.map(({ id, state, proof }) => `${id}: ${state}, ${proof.believed.map((one) => one.id)}`).join("\n")}`,
  );
  expect(falsely.length / walks.length).toBeLessThan(0.03);
  expect(well.length / walks.length).toBeGreaterThan(0.85);
});
