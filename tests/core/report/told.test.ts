import { expect, test } from "vitest";
import { positionRemoved } from "#core/drawing/removing.ts";
import { toldWords } from "#core/report/told.ts";
import type { Rig } from "#core/rig/rig.ts";
import { add, type Log, lastToTake, rigIn } from "#core/session/log.ts";
import { english } from "#core/words/english.ts";
import { at, derived, empty } from "#tests/support/entries.ts";

const drawn = (log: Log, rig: Rig): Log => add(log, { entry: "drawing", rig }, 0);

/** What the board says was last said. */
function said(log: Log): string {
  const last = lastToTake(log);
  if (last === undefined) throw new Error("nothing was said");
  return toldWords(english, derived(log).model, last, log);
}

/** The log with its first position called otherwise. */
function renamed(log: Log, name: string): Log {
  const rig = rigIn(log);
  if (rig === undefined) throw new Error("there is no rig");
  const positions = rig.positions.map((one, index) => (index === 0 ? { ...one, name } : one));
  return drawn(log, { ...rig, positions });
}

/** The log with its first position taken out. */
function removed(log: Log): Log {
  const rig = rigIn(log);
  const edited = rig && positionRemoved(rig, "position 1");
  if (edited === undefined || "refusal" in edited) throw new Error("it was not removed");
  return drawn(log, edited.rig);
}

test("what was said at a position that is gone is told by the name that it had last", () => {
  const heard = at(empty, "position 1", "left", "left ear");
  expect(said(heard)).toMatch(/^1 host, /);
  expect(said(removed(heard))).toBe(said(heard));
  expect(said(removed(renamed(heard, "1 Ines")))).toMatch(/^1 Ines, /);
  const nobody = add(empty, { entry: "absent", position: "position 1" }, 0);
  expect(said(removed(nobody))).toBe(said(nobody));
  const turned = add(
    empty,
    { entry: "move", move: { move: "turned round", position: "position 1" } },
    0,
  );
  expect(said(removed(turned))).toBe(said(turned));
});
