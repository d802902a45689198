import { isFed, reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { messageOf, type Path, type Problem } from "./problem.ts";

/** Positions that nothing feeds, parts that two boxes drive, and ways that lead back to where they come from. */
export function feedingProblems(rig: BuiltRig, at: Path): readonly Problem[] {
  const seats = rig.positions.flatMap(({ wears }, index): Problem[] =>
    isFed(rig, wears)
      ? []
      : [
          {
            path: [...at, "positions", index, "wears"],
            expected: "headphones that are plugged in",
            found: wears,
          },
        ],
  );
  const ways = rig.positions.map(({ wears }) => upstream(rig, wears));
  const first = new Map(
    ways.flatMap((amiss) => (amiss === undefined ? [] : [[amiss.part, amiss] as const])),
  );
  return [
    ...seats,
    ...[...first.values()].map(
      ({ part, expected }): Problem => ({ path: endAt(rig, part, at), expected }),
    ),
  ];
}

/** The plug by which a part is fed. */
function endAt({ plugged }: BuiltRig, part: string, at: Path): Path {
  const own = plugged.findLastIndex((one) => one.part === part || one.into === part);
  return own < 0 ? [...at, "plugged"] : [...at, "plugged", own];
}

interface Amiss {
  readonly part: string;
  readonly expected: string;
}

/** What is amiss on the way from a part back to the source, the first of it. */
function upstream(rig: BuiltRig, wears: string): Amiss | undefined {
  const met = new Set<string>();
  for (let part = wears; isFed(rig, part); ) {
    if (met.has(part)) return { part, expected: `a way to ${part} that does not go round` };
    met.add(part);
    const from = driver(rig, part);
    if (typeof from !== "string") return from;
    part = from;
  }
  return undefined;
}

/** Which box drives a part; the core refuses two, and none. */
function driver(rig: BuiltRig, part: string): string | Amiss {
  try {
    return reachInto(rig, part).from;
  } catch (error) {
    return { part, expected: `one box that drives ${part} (${messageOf(error)})` };
  }
}
