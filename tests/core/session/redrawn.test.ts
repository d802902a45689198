import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Finding } from "#core/checks/finding.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import type { Edited } from "#core/drawing/edited.ts";
import { partNamed } from "#core/drawing/names.ts";
import { positionRemoved } from "#core/drawing/removing.ts";
import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import { starts } from "#core/rig/starts.ts";
import { derive } from "#core/session/derive.ts";
import { add, holding, type Log, lastDrawing, lastUndone } from "#core/session/log.ts";
import { after, someEdit } from "#tests/core/drawing/some-edits.ts";
import { at, derived, find } from "#tests/support/entries.ts";
import { long } from "#tests/support/long.ts";
import { starts as words } from "#ui/words/english/starts.ts";

const table = starts[0]?.make(words);
if (table === undefined) throw new Error("there is no start");
const begun = add([], { entry: "drawing", rig: table }, 0);

const drawn = (log: Log, how: (rig: Rig) => Edited): Log => {
  const edited = how(derived(log).rig);
  if ("refusal" in edited) throw new Error(JSON.stringify(edited.refusal));
  return add(log, { entry: "drawing", rig: edited.rig }, 0);
};

const takenBack = (log: Log, entry = lastDrawing(log)): Log =>
  entry === undefined ? log : add(log, { entry: "taken back", taken: entry.id }, 0);

describe("undo", () => {
  test("takes the last drawing back, redo that, and the first stays", () => {
    const two = drawn(begun, (rig) => partNamed(rig, "amplifier", "desk amp"));
    const three = drawn(two, (rig) => positionCopied(rig, "position 1"));
    const back = takenBack(takenBack(three));
    expect(derived(back).rig).toBe(table);
    expect(takenBack(back)).toBe(back);
    const again = takenBack(back, lastUndone(back));
    expect(derived(again).rig).toBe(derived(two).rig);
    const all = takenBack(again, lastUndone(again));
    expect(derived(all).rig).toBe(derived(three).rig);
    expect(lastUndone(all)).toBeUndefined();
    expect(derived(takenBack(all)).rig).toBe(derived(two).rig);
  });

  test("what is drawn afterwards takes the place of what was undone", () => {
    const back = takenBack(drawn(begun, (rig) => positionCopied(rig, "position 1")));
    expect(lastUndone(back)).toBeDefined();
    const other = drawn(back, (rig) => partNamed(rig, "amplifier", "desk amp"));
    expect(lastUndone(other)).toBeUndefined();
  });
});

describe("findings under a rig that is drawn anew", () => {
  const wrong = find(begun, "left", "nothing");
  const beliefs = (log: Log) => {
    const { beliefs: held, model } = derived(log);
    return [...held.sets(model.root).probabilities].slice(0, 20);
  };

  test("hold by whatever name their part has now", () => {
    const looked = add(
      wrong,
      {
        entry: "finding",
        finding: { asked: { check: "look", place: "amplifier" }, results: [["as it should be"]] },
      },
      0,
    );
    const named = drawn(looked, (rig) => partNamed(rig, "amplifier", "desk amp"));
    expect(derived(named).leftOut).toEqual([]);
    expect(beliefs(named)).toEqual(beliefs(looked));
  });

  test("at a position that is gone are left out and told, and hold again once it is back", () => {
    const gone = drawn(wrong, (rig) => positionRemoved(rig, "position 1"));
    expect(derived(gone).leftOut).toEqual([wrong.at(-1)]);
    expect(derived(gone).evidence.heard).toEqual([]);
    const back = takenBack(gone);
    expect(derived(back).leftOut).toEqual([]);
    expect(beliefs(back)).toEqual(beliefs(wrong));
  });

  test("say nothing of another thing that has the name of what is gone", () => {
    const gone = drawn(at(begun, "position 4", "left", "nothing"), (rig) =>
      positionRemoved(rig, "position 4"),
    );
    const again = drawn(gone, (rig) => positionCopied(rig, "position 3"));
    expect(derived(again).rig.positions.map(({ id }) => id)).toContain("position 4");
    expect(derived(again).leftOut).toHaveLength(1);
  });
});

const names = (rig: Rig): readonly string[] => [...rig.parts.map(({ id }) => id), "a kettle"];
const seats = (rig: Rig): readonly string[] => [...rig.positions.map(({ id }) => id), "nowhere"];
const pick = (all: readonly string[], number: number): string => all[number % all.length] ?? "";

/** A finding or a move by three numbers, of things the rig has or lacks. */
function something(rig: Rig, [what, one, other]: readonly [number, number, number]) {
  const [part, into, position] = [
    pick(names(rig), one),
    pick(names(rig), other),
    pick(seats(rig), one),
  ];
  const end = rig.plugged[one % rig.plugged.length];
  const spot = rig.plugged[other % rig.plugged.length];
  const findings: readonly Finding[] = [
    { asked: { check: "left", position }, results: [["nothing"]] },
    { asked: { check: "pair", position }, results: [["middle"], ["all round"]] },
    { asked: { check: "look", place: part }, results: [["as it should be"]] },
    { asked: { check: "look", place: `${into}, plug` }, results: [[`${into} / plug / not home`]] },
    { asked: { check: "twist", part, plug: end?.plug ?? "plug" }, results: [["nothing changes"]] },
    { asked: { check: "continuity", part, from: "plug.tip", to: "plug.sleeve" }, ohms: 32 },
  ];
  const moves: readonly Move[] = [
    { move: "replaced", place: part },
    { move: "set right", place: `${part}, output 1` },
    { move: "exchanged", parts: [part, into] },
    { move: "known good in", part },
    { move: "put back", part },
    { move: "turned round", position },
    { move: "plugged anew", part: end?.part ?? part, plug: end?.plug ?? "plug" },
    {
      move: "moved",
      part: end?.part ?? part,
      plug: end?.plug ?? "plug",
      into: spot?.into ?? into,
      socket: what % 2 === 0 ? (spot?.socket ?? "in") : "output 9",
    },
  ];
  const finding = findings[what % (findings.length + moves.length)];
  const move = moves[(what % (findings.length + moves.length)) - findings.length];
  if (finding !== undefined) return { entry: "finding", finding } as const;
  if (move !== undefined) return { entry: "move", move } as const;
  throw new Error("nothing was drawn by chance");
}

type Happened =
  | { readonly now: "edited"; readonly edits: Parameters<typeof after>[1] }
  | { readonly now: "something"; readonly numbers: readonly [number, number, number] }
  | { readonly now: "undone" | "redone" };

const happened: fc.Arbitrary<Happened> = fc.oneof(
  fc.record({
    now: fc.constant("edited" as const),
    edits: fc.array(someEdit, { minLength: 1, maxLength: 3 }),
  }),
  fc.record({
    now: fc.constant("something" as const),
    numbers: fc.tuple(fc.nat(999), fc.nat(999), fc.nat(999)),
  }),
  fc.record({ now: fc.constantFrom("undone" as const, "redone" as const) }),
);

const rigOf = (log: Log): Rig => {
  const drawing = holding(log).findLast(({ entry }) => entry === "drawing");
  if (drawing?.entry !== "drawing") throw new Error("nothing is drawn");
  return drawing.rig;
};

function next(log: Log, one: Happened): Log {
  const rig = rigOf(log);
  switch (one.now) {
    case "something":
      return add(log, something(rig, one.numbers), 0);
    case "undone":
      return takenBack(log);
    case "redone":
      return takenBack(log, lastUndone(log));
    case "edited": {
      const edited = after(rig, one.edits);
      return edited === rig ? log : add(log, { entry: "drawing", rig: edited }, 0);
    }
  }
}

const smallRigs = starts.filter(({ key }) => key === "draw your own" || key === "podcast table");

test("whatever is drawn, found, done and undone: it is derived, and every entry tells or is told to be left out", {
  timeout: 900_000,
}, () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...smallRigs),
      fc.array(happened, { minLength: 2, maxLength: 12 }),
      ({ make }, all) => {
        const log = all.reduce(next, add([], { entry: "drawing", rig: make(words) }, 0));
        const found = derive(log);
        const told = holding(log).filter(({ entry }) => entry === "finding" || entry === "move");
        expect((found?.happenings.length ?? 0) + (found?.leftOut.length ?? 0)).toBe(told.length);
      },
    ),
    { numRuns: long ? 500 : 25 },
  );
});
