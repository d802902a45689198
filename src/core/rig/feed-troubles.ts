import { isFed, reachInto } from "./reach.ts";
import type { BuiltRig } from "./rig.ts";
import type { FeedTrouble } from "./trouble.ts";

/** Positions that nothing feeds, parts that two boxes drive, and ways that lead back to where they come from. */
export function feedTroubles(rig: BuiltRig): readonly FeedTrouble[] {
  const seats = rig.positions.flatMap(({ wears }, index): FeedTrouble[] =>
    isFed(rig, wears) ? [] : [{ trouble: "hangs from nothing", index, id: wears }],
  );
  const sound = new Set<string>();
  const ways = rig.positions.map(({ wears }) => upstream(rig, wears, sound));
  const first = new Map(
    ways.flatMap((amiss) => (amiss === undefined ? [] : [[amiss.part, amiss] as const])),
  );
  return [...seats, ...first.values()];
}

/** The plug by which a part is fed. */
function endOf({ plugged }: BuiltRig, part: string): number | undefined {
  const own = plugged.findLastIndex((one) => one.part === part || one.into === part);
  return own < 0 ? undefined : own;
}

type Amiss = Extract<FeedTrouble, { readonly part: string }>;

/** What is amiss on the way from a part back to the source, the first of it. `sound` has what was found in order on other ways. */
function upstream(rig: BuiltRig, wears: string, sound: Set<string>): Amiss | undefined {
  const met = new Set<string>();
  for (let part = wears; isFed(rig, part) && !sound.has(part); ) {
    if (met.has(part)) return { trouble: "goes round", part, index: endOf(rig, part) };
    met.add(part);
    const from = driver(rig, part);
    if (typeof from !== "string") return from;
    part = from;
  }
  for (const part of met) sound.add(part);
  return undefined;
}

/** Which box drives a part; `reachInto` refuses two, and none. */
function driver(rig: BuiltRig, part: string): string | Amiss {
  try {
    return reachInto(rig, part).from;
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    return { trouble: "not one feed", part, index: endOf(rig, part), said };
  }
}
