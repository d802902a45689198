import { afterAll, describe, expect, test } from "vitest";
import { diagnosisFormat } from "#cli/diagnosis-format.ts";
import { readInput } from "#cli/read-input.ts";
import { run } from "#cli/run.ts";
import { badNames } from "./bad-names.ts";
import { badRigs } from "./bad-rigs.ts";
import { badShapes } from "./bad-shapes.ts";
import { byScript, diagnose, type Ended, example, folder, threeAtATime } from "./command.ts";

const files = folder();
afterAll(files.remove);

const examplePath = "public/example-case.json";
const withoutTrace = (err: string) => expect(err).not.toMatch(/^\s+at |this program failed/m);

describe("a good case", { timeout: 60_000 }, () => {
  test("by the script: what is suspected, what next, and why, as its schema has it", async () => {
    const { code, out, err } = await byScript([examplePath]);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { positions, groups } = diagnosisFormat.parse(JSON.parse(out));
    expect(positions.length).toBe(3);
    const third = positions.find(({ position }) => position === "position 3");
    const [suspect] = third?.suspects ?? [];
    expect(suspect?.faults[0]?.words).toBe("the return is lost in headphones 3");
    expect(suspect?.explanation.map(({ asked }) => asked.check)).toEqual(
      example().log.map(
        (entry: { finding: { asked: { check: string } } }) => entry.finding.asked.check,
      ),
    );
    expect(groups.find(({ group }) => group === suspect?.group)?.faults).toEqual(
      expect.arrayContaining(suspect?.faults.map(({ id }) => id) ?? [""]),
    );
    expect(third?.notTested.length).toBeGreaterThan(0);
  });

  test("one position; from the standard input the same as from a file", async () => {
    const asked = ["--position", "position 3"];
    const [file, input] = await threeAtATime([examplePath, "-"], (path) =>
      diagnose([...asked, path], path === "-" ? JSON.stringify(example()) : undefined),
    );
    expect(file?.code).toBe(0);
    expect(input).toEqual(file);
    expect(diagnosisFormat.parse(JSON.parse(file?.out ?? "")).positions.length).toBe(1);
  });

  test("--text says it to people", async () => {
    const { code, out } = await diagnose(["--text", "--position", "position 3", examplePath]);
    expect(code).toBe(0);
    expect(out).toContain("the return is lost in headphones 3");
    expect(out).toMatch(/Next: .*\(\d+ s\)/);
    expect(out).toContain("3 fiddle, two knocks: all round, no place; so it would be.");
    expect(out).toContain("both sides inverted together");
    expect(out).not.toMatch(/undefined|\[object/);
  });

  test("every kind of finding and move is read, and what was taken back is not asked", async () => {
    const one = example();
    const found = (asked: object, rest: object) => ({
      entry: "finding",
      finding: { asked, ...rest },
    });
    const moved = (move: object) => ({ entry: "move", move });
    one.log.push(
      found(
        { check: "twist", part: "feed lead", plug: "near" },
        { results: [["nothing changes"]] },
      ),
      found({ check: "look", place: "mixer" }, { results: [["as it should be"]] }),
      found(
        { check: "continuity", part: "feed lead", from: "near.tip", to: "far.tip" },
        { ohms: 0.4 },
      ),
      found(
        { check: "matrix", position: "position 1" },
        {
          gains: [
            [1, 0],
            [0, 0],
            [0, 0],
            [1, 0],
          ],
          error: 0.02,
        },
      ),
      found(
        { check: "left", position: "position 1" },
        { results: [["left ear"]], otherTimes: [["nothing"]] },
      ),
      moved({ move: "known good in", part: "headphones 3" }),
      found({ check: "twist", part: "known good headphones 3", plug: "plug" }, { results: [] }),
      moved({ move: "put back", part: "headphones 3" }),
      moved({ move: "exchanged", parts: ["headphones 3", "headphones 2"] }),
      { entry: "cannot", move: { move: "known good in", part: "feed lead" } },
      moved({ move: "turned round", position: "position 3" }),
      moved({ move: "set", part: "mixer", control: "left pan", value: 1 }),
      moved({ move: "plugged anew", part: "feed lead", plug: "far" }),
      moved({ move: "moved", part: "feed lead", plug: "near", into: "mixer", socket: "send" }),
      moved({ move: "replaced", place: "feed lead" }),
      moved({ move: "set right", place: "mixer" }),
      { ...found({ check: "left", position: "balcony" }, { results: [] }), id: "slip" },
      { entry: "taken back", taken: "slip" },
    );
    const { code, out, err } = await diagnose(
      ["-", "--position", "position 3"],
      JSON.stringify(one),
    );
    expect({ code, err }).toEqual({ code: 0, err: "" });
    expect(diagnosisFormat.parse(JSON.parse(out)).positions[0]?.name).toBe("3 fiddle");
  });

  test("an unknown key is kept, and named as a warning", async () => {
    const one = example();
    one.rig.parts[0].colour = "teal";
    one.rig.parts[0].settings = { shoe: 43 };
    one.rig.parts[2].controls = { warp: 1 };
    one.log[0].finding["a/b"] = { deep: [1, "two"] };
    const [echo, told] = await threeAtATime(
      [
        ["--echo", "-"],
        ["-", "--position", "position 2"],
      ],
      (args) => diagnose(args, JSON.stringify(one)),
    );
    expect(echo?.code).toBe(0);
    expect(JSON.parse(echo?.out ?? "")).toEqual(one);
    expect(told?.code).toBe(0);
    expect(diagnosisFormat.safeParse(JSON.parse(told?.out ?? "")).success).toBe(true);
    for (const ended of [echo, told])
      expect(ended?.err.split("\n").map((line) => line.split(": ")[0])).toEqual([
        "/rig/parts/0/colour",
        "/log/0/finding/a~1b",
        "/rig/parts/0/settings/shoe",
        "/rig/parts/2/controls/warp",
        "",
      ]);
  });
});

describe("a case that cannot be read", () => {
  const cases = [...badShapes, ...badRigs, ...badNames];
  const written = (name: string) => {
    const one = example();
    cases.find((bad) => bad.name === name)?.change(one);
    return files.write(`${name}.json`, JSON.stringify(one));
  };
  const check = ({ code, out, err }: Ended, says: string | undefined) => {
    expect(err).toContain(says);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(/^(?:\/\S.*?: expected .*\n)+$/);
  };

  test.for(cases)("$name", async ({ name, says }) => {
    check(await run([written(name)], readInput), says);
  });

  test("the same in processes of their own", { timeout: 60_000 }, async () => {
    const some = cases.filter((_, at) => at % 9 === 0);
    const ended = await threeAtATime(some, ({ name }) => diagnose([written(name)]));
    for (const [at, one] of ended.entries()) check(one, some[at]?.says);
  });
});

test("what is no file, no text, no JSON or too large is said in a line", {
  timeout: 60_000,
}, async () => {
  const cases: readonly [args: readonly string[], says: string][] = [
    [[], "Expected one case file."],
    [["a.json", "b.json"], "Usage: npm run --silent diagnose"],
    [["--loud", examplePath], "--loud"],
    [["--text", "--echo", examplePath], "not both"],
    [["--position", "balcony", examplePath], "--position: expected one of position 1"],
    [[files.write("broken.json", '{\n "log": [1,]\n}')], "line 2, column 12: expected a value\n"],
    [[files.write("empty.json", "")], "line 1, column 1: expected a value\n"],
    [[files.write("list.json", "[]")], "the case: expected an object, found a list"],
    [[files.write("latin.json", Uint8Array.of(0x22, 0xe9, 0x22))], "expected UTF-8"],
    [[files.write("deep.json", "[".repeat(100_000))], "at most 64 brackets"],
    [[files.write("large.json", " ".repeat(20 * 1024 * 1024 + 1))], "expected at most 20 MB"],
    [[`${files.path}/nothing.json`], "there is no such file"],
    [[files.path], "expected a file, found a folder"],
  ];
  const check = ({ code, out, err }: Ended, says: string) => {
    expect(err).toContain(says);
    expect({ code, out }).toEqual({ code: 2, out: "" });
    withoutTrace(err);
  };
  for (const [args, says] of cases) check(await run(args, readInput), says);
  const some = cases.filter((_, at) => at % 5 === 0);
  await threeAtATime(some, async ([args, says]) => check(await diagnose(args), says));
});
