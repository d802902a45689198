import { expect, test } from "vitest";
import { earCheck } from "#core/checks/catalogue.ts";
import { soundedIn } from "#core/session/exposed.ts";
import { add, type Log } from "#core/session/log.ts";
import { derived, empty } from "#tests/support/entries.ts";

const answered = (log: Log, position: string, check: "left" | "pair", level?: number): Log =>
  add(
    log,
    {
      entry: "finding",
      finding: { asked: { check, position }, results: [["nothing"]] },
      ...(level === undefined ? {} : { level }),
    },
    0,
  );

test("the test sounds of a session: where, how loud, for how long; what was taken back or had no level is not in it", () => {
  let log = answered(empty, "position 1", "left", -50);
  log = answered(log, "position 2", "pair", -41);
  log = answered(log, "position 1", "left");
  const before = log;
  log = answered(log, "position 1", "pair", -20);
  log = add(log, { entry: "taken back", taken: log.at(-1)?.id ?? "" }, 0);
  const due = [
    { position: "position 1", level: -50, seconds: earCheck("left").seconds },
    { position: "position 2", level: -41, seconds: earCheck("pair").seconds },
  ];
  expect(soundedIn(derived(before))).toEqual(due);
  expect(soundedIn(derived(log))).toEqual(due);
});
