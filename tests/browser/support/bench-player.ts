import { hide } from "#core/bench/bench.ts";
import { earCheck } from "#core/checks/catalogue.ts";
import type { EarCheckName } from "#core/checks/check.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";

const [drawn = straightIn] = builtInRigs;
const rig = build(drawn);

/** Somebody who plays the bench and always answers what is likeliest: for each question of a check, in the core's order. */
export function benchPlayer(number: number) {
  const { hidden } = hide(drawn, number);
  return {
    hidden,
    answers: (check: EarCheckName, position: string, mended: boolean): readonly string[] => {
      const there: readonly RigFault[] = mended ? [] : [hidden];
      const [now, healthy] = [behaviourAt(rig, position, there), behaviourAt(rig, position, [])];
      return earCheck(check).questions.map(({ answers, predict }) => {
        const chances = predict(now, healthy);
        return answers[chances.indexOf(Math.max(...chances))] ?? "";
      });
    },
    positionOf: (name: string) => drawn.positions.find((one) => one.name === name)?.id ?? "",
  };
}

/** The first rig number that hides a fault. Throws where none does. */
export function numberOf(id: string): number {
  for (let number = 1; number < 100_000; number++)
    if (hide(drawn, number).hidden.id === id) return number;
  throw new Error(`no rig number hides ${id}`);
}
