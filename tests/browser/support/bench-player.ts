import { hide } from "#core/bench/bench.ts";
import { earCheck } from "#core/checks/catalogue.ts";
import type { EarCheckName } from "#core/checks/check.ts";
import { arranged, asDrawn } from "#core/rig/arranged.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import type { Move } from "#core/rig/moves.ts";
import { build } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";

const [drawn = straightIn] = builtInRigs;
const rig = build(drawn);

/** Somebody who plays the bench and always answers what is likeliest after some moves: for each question of a check, in the core's order. */
export function benchPlayer(number: number) {
  const { hidden, there } = hide(drawn, number);
  return {
    hidden,
    answers: (check: EarCheckName, position: string, moves: readonly Move[]): readonly string[] => {
      const left: readonly RigFault[] = there(moves) ? [hidden] : [];
      const rigNow = build(moves.reduce(arranged, asDrawn(drawn)).rig);
      const [now, healthy] = [behaviourAt(rigNow, position, left), behaviourAt(rig, position, [])];
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
