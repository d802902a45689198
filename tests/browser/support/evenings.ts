import type { MeasuredGains } from "#core/checks/finding.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { createMemoryShelf, type MemoryShelf } from "#storage/memory-shelf.ts";

const [rig = straightIn] = builtInRigs;
const position = "position 3";
const week = 7 * 24 * 60 * 60 * 1000;
/** An evening in November. */
const evening = 1_763_748_000_000;

const log = (at: number, ...said: readonly Said[]): Log =>
  said.reduce<Log>((so, one) => add(so, one, at), add([], { entry: "drawing", rig }, at));

const named = (name: string, who: string): Said => ({ entry: "titled", name, who });
const heard = (check: "left" | "right" | "pair", ...results: string[][]): Said => ({
  entry: "finding",
  finding: { asked: { check, position }, results },
  level: -40,
});
const healthy = [
  heard("left", ["left ear"]),
  heard("right", ["right ear"]),
  heard("pair", ["middle"], ["all round"]),
];
const measured = (right: number): Said => {
  const gains: MeasuredGains = [
    [1, 0],
    [0, 0],
    [0, 0],
    [right, 0],
  ];
  return {
    entry: "finding",
    finding: { asked: { check: "matrix", position }, gains, error: 0.01 },
  };
};

/** An evening before all of them, on which nobody heard anything. */
export const drawnAlone: Log = log(evening - week);

/** Three evenings: last week all was well, this week one has lost 4 dB on the right, and a rig without gear is under way. */
export function evenings(): MemoryShelf {
  const shelf = createMemoryShelf();
  const [then, now] = ["First evening", "Second evening"].map((name) =>
    named(name, "the late shift"),
  );
  if (then === undefined || now === undefined) throw new Error("two evenings");
  shelf.lay("a", log(evening, then, ...healthy, measured(1)));
  shelf.lay("c", log(evening + 2 * week), 12);
  shelf.lay("b", log(evening + week, now, ...healthy, measured(10 ** (-4 / 20))));
  return shelf;
}
