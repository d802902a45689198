import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { diagnosisFormat } from "#cli/diagnosis-format.ts";
import { run } from "#cli/run.ts";
import type { Noise, Trial } from "#core/checks/noise.ts";
import { partNamed } from "#core/drawing/names.ts";
import { noticedWords } from "#core/report/noise-words.ts";
import { toldWords } from "#core/report/told.ts";
import { example } from "#core/rig/rigs.ts";
import { caseText } from "#core/session/case.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { huntIn, noisesAt, noisesIn, noticedAt } from "#core/session/noises.ts";
import { readFile } from "#core/session/read-case.ts";
import { english } from "#core/words/english.ts";
import { german } from "#core/words/german.ts";
import { derived, well } from "#tests/support/entries.ts";

const position = "position 1";
const drawn = add([], { entry: "drawing", rig: example }, 1);
const noticed = (noise: Noise, trial: Trial, ...given: readonly string[]): Said => ({
  entry: "finding",
  finding: { asked: { check: "noise", position, noise, trial }, results: [given] },
});
const knob: Trial = { try: "knob down", part: "amplifier", socket: "output 1" };
const with1 = (log: Log, ...said: readonly Said[]): Log =>
  said.reduce<Log>((so, one) => add(so, one, 1), log);
const hissing = with1(
  drawn,
  noticed("hiss", knob, "the same"),
  noticed("hiss", { try: "elsewhere", position: "position 2" }, "not there"),
);
const complained = (...results: string[]): Said => ({
  entry: "finding",
  finding: { asked: { check: "complaint", position }, results: [results] },
});

test("what was noticed goes into a file and comes out of it the same", () => {
  const file = readFile(caseText(hissing, { id: "one", written: 1 }));
  expect(file).toMatchObject({ read: true, lost: [] });
  expect(file.read && file.log).toEqual(hissing);
});

test("what cannot be a trial is left out of a file, and named", () => {
  const bad = [
    { try: "knob down", part: "amplifier" },
    { try: "elsewhere" },
    { try: "constructor" },
    { try: "thump" },
    "knob down",
  ].map((trial) => noticed("hiss", trial as unknown as Trial, "gone"));
  const file = readFile(caseText(with1(drawn, ...bad), { id: "one", written: 1 }));
  expect(file.read && file.lost).toHaveLength(bad.length);
  expect(file.read && file.log).toHaveLength(1);
});

test("an older file opens as before, and speaks of no noise", () => {
  const file = readFile(readFileSync("tests/fixtures/kept/case-version-1.json", "utf8"));
  if (!file.read) throw new Error(file.why);
  const old = derived(file.log);
  expect(old.leftOut).toEqual([]);
  for (const { id } of old.rig.positions)
    expect(noisesAt(old, id).every((noise) => noise !== "distortion")).toBe(true);
});

test("a noise tells nothing of left and right", () => {
  const before = derived(well(drawn, position));
  const after = derived(with1(well(drawn, position), ...hissing.slice(1)));
  expect(after.state(position)).toBe(before.state(position));
  expect(after.standing(position).trouble).toBeCloseTo(before.standing(position).trouble, 12);
});

describe("what still speaks of the way", () => {
  const crackle = noticed("crackle", { try: "lead bent", part: "feed lead" }, "it goes with it");
  const begun = with1(drawn, crackle);

  test("a hand on the way takes what was noticed before it away, one elsewhere does not", () => {
    const replaced = (place: string): Said => ({
      entry: "move",
      move: { move: "replaced", place },
    });
    const count = (log: Log) => noticedAt(derived(log), position, "crackle").length;
    expect(count(begun)).toBe(1);
    expect(count(with1(begun, replaced("feed lead")))).toBe(0);
    expect(count(with1(begun, replaced("headphones 2")))).toBe(1);
    expect(count(with1(begun, replaced("feed lead"), crackle))).toBe(1);
  });

  test("taken back, it was never noticed", () => {
    const taken = with1(begun, { entry: "taken back", taken: begun.at(-1)?.id ?? "" });
    expect(noticedAt(derived(taken), position, "crackle")).toEqual([]);
  });

  test("a part that has another name is followed, one that is gone is left out", () => {
    const edited = partNamed(example, "feed lead", "long lead");
    if ("refusal" in edited) throw new Error(JSON.stringify(edited.refusal));
    const renamed = derived(with1(begun, { entry: "drawing", rig: edited.rig }));
    expect(noticedAt(renamed, position, "crackle")[0]?.asked.trial).toMatchObject({
      part: "long lead",
    });
    const other = derived(with1(drawn, noticed("hiss", { ...knob, part: "no such box" }, "gone")));
    expect(other.leftOut).toHaveLength(1);
  });
});

describe("which noises are spoken of", () => {
  test("by a complaint that is of nothing else, and by what was tried", () => {
    const at = (...said: readonly Said[]) => noisesAt(derived(with1(drawn, ...said)), position);
    expect(at(complained("hum"))).toEqual(["hum"]);
    expect(at(complained("hum", "crackle, or it comes and goes"))).toEqual(["hum", "crackle"]);
    expect(at(complained("crackle, or it comes and goes", "only the left ear works"))).toEqual([]);
    expect(at(noticed("distortion", { try: "quieter source" }, "less"))).toEqual(["distortion"]);
    expect(noisesIn(["something else"])).toEqual([]);
  });
});

test("it is told in one line, in both languages", () => {
  const now = derived(hissing);
  const [, first, second] = hissing;
  if (first === undefined || second === undefined) throw new Error("two entries were made");
  expect(toldWords(english, now.model, first, hissing)).toBe(
    "1 host, hiss, the knob of the amplifier, output 1 down: the same",
  );
  expect(toldWords(german, now.model, second, hissing)).toBe(
    "1 host, Rauschen, gehört am Platz 2 reader: dort nicht",
  );
  const asked = { check: "noise", position, noise: "hiss", trial: knob } as const;
  expect(noticedWords(english, now.rig, { asked, results: [[]] })).toContain("not possible");
});

describe("the command", () => {
  const made = async (log: Log, ...args: readonly string[]) =>
    run([...args, "-"], async () => ({ text: caseText(log, { id: "one", written: 1 }) }));

  test("says where a noise comes in, as its format has it; nothing where there is none", async () => {
    const { code, out, err } = await made(hissing);
    expect({ code, err }).toEqual({ code: 0, err: "" });
    const { positions } = diagnosisFormat.parse(JSON.parse(out));
    const [first, second] = positions;
    expect(second?.noises).toBeUndefined();
    expect(first?.noises?.[0]).toMatchObject({ noise: "hiss" });
    const hunt = huntIn(derived(hissing), position, "hiss");
    const [suspect] = first?.noises?.[0]?.suspects ?? [];
    expect(suspect?.causes[0]?.cause).toBe(hunt?.suspects[0]?.causes[0]?.cause);
    expect(suspect?.probability).toBeCloseTo(hunt?.suspects[0]?.probability ?? 0, 3);
  });

  test("for people: what to try, and what helps once it is sure", async () => {
    const { out } = await made(with1(drawn, complained("hum")), "--text");
    expect(out).toContain("Hum.");
    expect(out).toMatch(/Try: .* What becomes of the hum\? \(\d+ s\)/);
    const driver = noticed("distortion", { try: "other headphones" }, "gone");
    const sure = await made(with1(drawn, driver, driver), "--text");
    expect(sure.out).toContain("a driver of headphones 1 is torn or worn");
    expect(sure.out).toContain("Give out other headphones");
  });

  test("names what is not in the rig or not on the list, with its pointer", async () => {
    const bad = with1(
      drawn,
      noticed("hiss", { ...knob, socket: "output 77" }, "gone"),
      noticed("hiss", knob, "louder than ever"),
    );
    const { code, err } = await made(bad);
    expect(code).toBe(2);
    expect(err).toContain("/log/1/finding/asked/trial/socket: expected one of output 1");
    expect(err).toContain("/log/2/finding/results/0/0: expected one of gone, less, the same, more");
  });
});
