import type { Effect } from "#core/rig/effect.ts";
import type { MouthLane } from "./cable-lanes.ts";
import { type Content, type Shown, shown, sum } from "./content.ts";
import { effectLanes } from "./effect-lanes.ts";

/**
 * What ties the lanes together where they arrive, though no wire joins them: the return is lost, and each ear gets the one side less the
 * other. Nothing where the ears get what the lanes bring.
 */
export function tieOf(
  mouths: readonly MouthLane[],
  ears: readonly [Shown, Shown],
  effect: Effect | undefined,
): Effect | undefined {
  if (effect === undefined || effectLanes[effect].tie === undefined) return undefined;
  const brought = [0, 1].map((ear) => shown(sum(mouths.flatMap((lane) => partFor(lane, ear)))));
  return brought.every((one, ear) => isAlike(one, ears[ear === 0 ? 0 : 1])) ? undefined : effect;
}

const partFor = ({ mouth, content }: MouthLane, ear: number): readonly Content[] =>
  mouth.ears
    .filter((one) => one.ear === ear)
    .map(({ minus }) => {
      const by = minus ? -1 : 1;
      return { left: by * content.left, right: by * content.right };
    });

const isAlike = (one: Shown, other: Shown): boolean =>
  one.carries === other.carries && one.difference === other.difference;
