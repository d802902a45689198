import { bench, describe } from "vitest";
import { standingAt } from "#core/diagnosis/advice.ts";
import { beliefsOf } from "#core/diagnosis/beliefs.ts";
import { evidenceOf } from "#core/diagnosis/gathering.ts";
import { modelOf } from "#core/diagnosis/model.ts";
import { whereNext } from "#core/session/where.ts";
import { derivedFrom, session, sizes } from "./speed.ts";

const few = { iterations: 5, time: 1000, warmupIterations: 1, warmupTime: 0 };

describe.each(sizes)("%i positions", (count) => {
  const presses = session(count);
  const last = presses.at(-1);
  const log = last?.log ?? [];
  const position = last?.position ?? "";
  const { model, groups, happenings, rig } = derivedFrom(log);
  const replaced = [
    ...happenings,
    { kind: "move", move: { move: "replaced", place: `headphones ${count}` } } as const,
  ];
  bench(
    "beliefs from the whole log and the next check (bound: 16 ms)",
    () => {
      const evidence = evidenceOf(model, happenings);
      standingAt(model, groups, evidence, beliefsOf(model, evidence), position);
    },
    few,
  );
  bench(
    "the same after a part was replaced",
    () => {
      const evidence = evidenceOf(model, replaced);
      standingAt(model, groups, evidence, beliefsOf(model, evidence), position);
    },
    few,
  );
  bench(
    "where to go next over all positions (bound: 100 ms)",
    () => {
      const looking = whereNext(derivedFrom([...log]));
      while (looking.next().done !== true);
    },
    few,
  );
  bench(
    "the named alternative: the rig's table made anew for every answer (bound: 100 ms a kind of branch)",
    () => {
      modelOf(rig);
    },
    few,
  );
});
