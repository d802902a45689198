import type { EarCheckName } from "#core/checks/check.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";

const [rig] = builtInRigs;
if (rig === undefined) throw new Error("there is no built-in rig");
export const empty = add([], { entry: "drawing", rig }, 0);

export const find = (log: Log, check: EarCheckName, ...answers: string[]): Log =>
  at(log, "position 1", check, ...answers);
export const at = (log: Log, position: string, check: EarCheckName, ...answers: string[]): Log =>
  add(
    log,
    {
      entry: "finding",
      finding: { asked: { check, position }, results: answers.map((one) => [one]) },
    },
    0,
  );

/** The three required checks at a position; of the pair the burst in phase first. */
const heardAll = (log: Log, position: string, left: string, right: string, ...pair: string[]) =>
  at(at(at(log, position, "left", left), position, "right", right), position, "pair", ...pair);

/** A position where all is as it should be. */
export const well = (log: Log, position: string): Log =>
  heardAll(log, position, "left ear", "right ear", "middle", "all round");

/** A position where both sides are in the middle and what is opposite is gone. */
export const inMono = (log: Log, position: string): Log =>
  heardAll(log, position, "middle", "middle", "middle", "nothing");

export function derived(log: Log) {
  const found = derive(log);
  if (found === undefined) throw new Error("nothing was derived");
  return found;
}

/** How likely one fault of position 1 or the trunk is, over all sets it is in. */
export function chance(log: Log, is: (fault: RigFault) => boolean): number {
  const { model, beliefs } = derived(log);
  return model.wayTo("position 1").reduce((all, branch) => {
    const { faults, probabilities } = beliefs.sets(branch);
    return (
      all +
      faults.reduce((sum, set, index) => sum + (set.some(is) ? (probabilities[index] ?? 0) : 0), 0)
    );
  }, 0);
}
