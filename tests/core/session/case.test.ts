import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { run } from "#cli/run.ts";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { caseText } from "#core/session/case.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { readFile } from "#core/session/read-case.ts";

const position = "position 1";
const [rig = straightIn] = builtInRigs;
const about = { id: "1764-7", written: 1764 };
const text = fc.string({ unit: "grapheme" });

const said: fc.Arbitrary<Said> = fc.oneof(
  fc.constant<Said>({ entry: "drawing", rig }),
  fc.record({ entry: fc.constant("titled" as const), name: text, who: text }),
  fc.constant<Said>({ entry: "absent", position }),
  fc.constantFrom("left", "right").map(
    (check): Said => ({
      entry: "finding",
      finding: { asked: { check, position }, results: [["left ear"]] },
      level: -40,
    }),
  ),
  fc.constant<Said>({ entry: "move", move: { move: "turned round", position } }),
  fc.constant<Said>({ entry: "taken back", taken: "2" }),
);

const logs: fc.Arbitrary<Log> = fc
  .array(fc.tuple(said, fc.nat()), { maxLength: 12 })
  .map((all) =>
    all
      .filter(([one], index) => one.entry !== "taken back" || index > 1)
      .reduce<Log>(
        (log, [one, at]) => add(log, one, at),
        add(add([], { entry: "drawing", rig }, 1), { entry: "absent", position }, 1),
      ),
  );

describe("a session as a file", () => {
  test("comes back as it was", () => {
    fc.assert(
      fc.property(logs, fc.option(fc.nat(), { nil: undefined }), (log, bench) => {
        const whole = bench === undefined ? about : { ...about, bench };
        const read = readFile(caseText(log, whole));
        expect(read).toEqual({ read: true, log, lost: [], cutOff: false, about: whole });
      }),
    );
  });

  test("cut off anywhere it is a beginning of what it was, or refused", () => {
    fc.assert(
      fc.property(logs, fc.double({ min: 0, max: 1, noNaN: true }), (log, share) => {
        const whole = caseText(log, about);
        const read = readFile(whole.slice(0, Math.floor(share * (whole.length - 2))));
        if (!read.read) return;
        expect(read.cutOff).toBe(true);
        expect(read.log).toEqual(log.slice(0, read.log.length));
      }),
    );
  });

  test("is a case for the command, and warns of nothing", async () => {
    const log = add(add([], { entry: "drawing", rig }, 1), { entry: "titled", name: "Tallow" }, 2);
    const printed = await run(["-"], async () => ({ text: caseText(log, { ...about, bench: 7 }) }));
    expect(printed).toMatchObject({ code: 0, err: "" });
  });

  test("any text is read or refused, never thrown at", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (any) => {
        expect(readFile(any).read).toBeTypeOf("boolean");
      }),
    );
  });
});

describe("older files keep opening", () => {
  test.each([
    ["case-version-1.json", 0],
    ["local-storage.json", 0],
  ])("%s", (name, lost) => {
    const read = readFile(readFileSync(`tests/fixtures/kept/${name}`, "utf8"));
    if (!read.read) throw new Error(`it was refused: ${read.why}`);
    expect(read.lost).toHaveLength(lost);
    const derived = derive(read.log);
    expect(derived?.state("position 3")).not.toBe("not heard");
  });
});

const drawing = { id: "1", at: 1, entry: "drawing", rig };
const whole = { format: "leftwright case", version: 1, log: [drawing] };

describe("a file that is no session is refused by name", () => {
  test.each([
    ["", "empty"],
    ["  \n", "empty"],
    ["dinner at eight", "not JSON"],
    ["7", "no session"],
    ["null", "no session"],
    ["{}", "no session"],
    [JSON.stringify({ format: "leftwright measurement", version: 1 }), "another format"],
    [JSON.stringify({ log: [] }), "another format"],
    [JSON.stringify({ ...whole, version: 2 }), "a newer version"],
    [JSON.stringify({ ...whole, version: "one" }), "no session"],
    [JSON.stringify({ ...whole, log: {} }), "no log"],
    [JSON.stringify({ ...whole, log: [] }), "no rig"],
    [JSON.stringify({ ...whole, log: [{ ...drawing, rig: { name: "x" } }] }), "no rig"],
    ["[]", "no rig"],
  ])("%s", (file, why) => {
    expect(readFile(file)).toEqual({ read: false, why });
  });
});

describe("a file that is cut off before its rig stands in it", () => {
  const file = caseText(
    [drawing, { ...drawing, id: "2" }].map((one) => ({ ...one, entry: "drawing" as const })),
    about,
  );
  const [first = ""] = file.split("},\n");

  test.each([40, 100, 300, first.length])("after %i letters: that is said", (letters) => {
    expect(readFile(file.slice(0, letters))).toEqual({ read: false, why: "cut off" });
  });

  test("behind it the session is read, and broken in the midst of the rig it is not JSON", () => {
    expect(readFile(file.slice(0, first.length + 20))).toMatchObject({ read: true, cutOff: true });
    const broken = caseText([drawing], about).replace('"parts":[', '"parts":{');
    expect(readFile(broken)).toEqual({ read: false, why: "not JSON" });
  });
});

describe("brackets within brackets", () => {
  /** A session with so many brackets, one in another, the outermost three its own. */
  const nested = (deep: number) =>
    JSON.stringify({ ...whole, log: [{ ...drawing, more: 0 }] }).replace(
      '"more":0',
      `"more":${"[".repeat(deep - 3)}${"]".repeat(deep - 3)}`,
    );

  test("64 are read, as the command has it", async () => {
    expect(readFile(nested(64))).toMatchObject({ read: true, lost: [] });
    expect(readFile(nested(65))).toEqual({ read: false, why: "too deep" });
    const { err } = await run(["-"], async () => ({ text: nested(65) }));
    expect(err).toContain("at most 64 brackets within brackets");
    expect((await run(["-"], async () => ({ text: nested(64) }))).code).toBe(0);
  });

  test.each([5000, 200_000])("%i are refused by name, and nothing is thrown", (deep) => {
    expect(readFile(nested(deep))).toEqual({ read: false, why: "too deep" });
    expect(readFile(`[${"[".repeat(deep)}`)).toEqual({ read: false, why: "not JSON" });
  });
});

test("what cannot be understood is left out and named, all else stays", () => {
  const left = { asked: { check: "left", position }, results: [["left ear"]] };
  const elsewhere = { ...left, asked: { check: "left", position: "position 99" } };
  const log = [
    drawing,
    { entry: "danced" },
    { entry: "finding", finding: left },
    7,
    { id: "3", entry: "absent", position },
    { entry: "taken back", taken: "40" },
    { entry: "finding", finding: elsewhere },
    { entry: "finding", finding: left },
  ];
  const read = readFile(JSON.stringify({ ...whole, log }));
  if (!read.read) throw new Error(read.why);
  expect(read.log.map(({ id, entry }) => [id, entry])).toEqual([
    ["1", "drawing"],
    ["3", "finding"],
    ["7", "finding"],
    ["8", "finding"],
  ]);
  expect(read.lost).toEqual([
    { place: 2, entry: "danced", why: "not understood" },
    { place: 4, why: "not understood" },
    { place: 5, entry: "absent", why: "an id that is taken" },
    { place: 6, entry: "taken back", why: "takes back what is not there" },
  ]);
  expect(derive(read.log)?.leftOut.map(({ id }) => id)).toEqual(["7"]);
});
