import { describe, expect, test } from "vitest";
import { english } from "#recording/english.ts";
import { german } from "#recording/german.ts";
import { oddities, type Trouble, type TroubleName, troubleNames } from "#recording/trouble.ts";
import { troubleText } from "#recording/words.ts";
import { chunk, format, letters, number, riff } from "./made.ts";
import { readAll } from "./read.ts";
import { gone, inMemory } from "./slices.ts";

const data = chunk("data", [0, 64, 0, 192]);
const whole = riff([...format(), ...data]);
const extensible = (guid: readonly number[]) =>
  format({ code: 0xff_fe, more: [...number(22, 2), ...number(16, 2), ...number(3, 4), ...guid] });
const text = (words: string) => Uint8Array.from(letters(words));

/** Files that cannot be read: why, what is found there, and what somebody reads of it. */
const broken: readonly (readonly [
  trouble: TroubleName,
  found: Trouble["found"],
  words: RegExp,
  bytes: Uint8Array,
])[] = [
  ["empty", undefined, /empty/, new Uint8Array()],
  ["other kind", "text", /no WAV but text/, text("Levels of tonight: all fine.")],
  ["other kind", ["MP3"], /no WAV but MP3.*Export it as WAV/, text("ID3\x03\x00")],
  ["other kind", ["MP3"], /MP3/, Uint8Array.from([0xff, 0xfb, 0x90, 0x64, 0])],
  ["other kind", ["ZIP"], /ZIP/, text("PK\x03\x04\x14")],
  ["other kind", ["AIFF"], /AIFF/, text("FORM\x00\x00\x00\x2eAIFFCOMM")],
  ["other kind", ["MP4", "M4A"], /MP4 or M4A/, text("\x00\x00\x00\x20ftypM4A ")],
  ["unknown kind", undefined, /no WAV, nor/, new Uint8Array(100)],
  ["unknown kind", undefined, /no WAV, nor/, new Uint8Array(100).fill(255)],
  ["big-endian", undefined, /RIFX/, riff([], { name: "RIFX" })],
  ["other RIFF", "AVI", /not of sound \(AVI\)/, riff([], { form: "AVI " })],
  ["other RIFF", undefined, /not of sound\./, riff([], { form: "\x1b[2J" })],
  ["header cut off", undefined, /ends before its sound/, whole.slice(0, 10)],
  ["header cut off", undefined, /ends before its sound/, whole.slice(0, 12)],
  ["header cut off", undefined, /ends before its sound/, whole.slice(0, 30)],
  ["header cut off", undefined, /ends before its sound/, whole.slice(0, 41)],
  [
    "header cut off",
    undefined,
    /ends before its sound/,
    riff([...format(), ...chunk("LIST", Array(50).fill(1), 500)]),
  ],
  ["no format", undefined, /'fmt '/, riff([...data, ...chunk("LIST", [1, 2, 3, 4, 5, 6, 7, 8])])],
  ["no format", undefined, /'fmt '/, riff(Array(1000).fill(0))],
  ["no data", undefined, /'data'/, riff([...format(), ...chunk("LIST", [1, 2, 3, 4])])],
  ["no samples", undefined, /no samples/, riff([...format(), ...chunk("data", [])])],
  [
    "no samples",
    undefined,
    /no samples/,
    riff([...format(), ...chunk("data", []), ...chunk("LIST", [1, 2])]),
  ],
  ["no samples", undefined, /no samples/, riff([...format(), ...chunk("data", [1, 2])])],
  ["no samples", undefined, /no samples/, riff([...format(), ...chunk("data", [], 4e9)])],
  [
    "format too short",
    { bytes: 14 },
    /14 bytes/,
    riff([...chunk("fmt ", Array(14).fill(1)), ...data, ...data]),
  ],
  [
    "format too short",
    { bytes: 18 },
    /18 bytes/,
    riff([...format({ code: 0xff_fe, more: [0, 0] }), ...data]),
  ],
  [
    "compressed",
    { name: "A-law" },
    /compressed \(A-law\)/,
    riff([...format({ code: 6, bits: 8 }), ...data]),
  ],
  ["compressed", { name: "MP3" }, /MP3/, riff([...format({ code: 85, bits: 0 }), ...data])],
  ["compressed", { format: 4660 }, /format 4660/, riff([...format({ code: 0x12_34 }), ...data])],
  [
    "compressed",
    { format: "01000000000000000000000000000000" },
    /compressed/,
    riff([...extensible([1, ...Array(15).fill(0)]), ...data]),
  ],
  ["bits", { bits: 0, float: false }, /0 bits/, riff([...format({ bits: 0, frame: 4 }), ...data])],
  ["bits", { bits: 48, float: false }, /48 bits/, riff([...format({ bits: 48 }), ...data])],
  ["bits", { bits: 16, float: true }, /floating point/, riff([...format({ code: 3 }), ...data])],
  ["no channels", undefined, /no channels/, riff([...format({ channels: 0 }), ...data])],
  ["too many channels", { channels: 9 }, /9 channels/, riff([...format({ channels: 9 }), ...data])],
  [
    "too many channels",
    { channels: 65_535 },
    /65535/,
    riff([...format({ channels: 65_535, frame: 2 }), ...data]),
  ],
  ["no rate", undefined, /rate/, riff([...format({ rate: 0 }), ...data])],
  ["frame size", { is: 5, should: 4 }, /5 instead of 4/, riff([...format({ frame: 5 }), ...data])],
  ["frame size", { is: 0, should: 4 }, /0 instead of 4/, riff([...format({ frame: 0 }), ...data])],
];

describe("a file that cannot be read is a value with a name, and words", () => {
  test.for(broken)("%s %j: %s", async ([trouble, found, words, bytes]) => {
    const { slices, asked } = inMemory(bytes);
    const read = await readAll(slices);
    expect(read).toEqual({ trouble, found });
    if (!("trouble" in read)) return;
    expect(troubleText(english, read)).toMatch(words);
    expect(troubleText(german, read)).not.toMatch(
      /undefined|object|instead|floating|format |\bor\b|\btext\b/,
    );
    expect(asked.most).toBeLessThanOrEqual(1024);
  });

  test("a disk that is gone", async () => {
    expect(await readAll(gone)).toEqual({ trouble: "cannot be read" });
  });

  test("a file that becomes shorter while it is read", async () => {
    const { slices } = inMemory(whole.slice(0, 46), whole.length);
    expect(await readAll(slices)).toMatchObject({ ended: { trouble: "cannot be read" } });
  });

  test("every trouble has a case here, and every word says what to do", () => {
    // A rate is no trouble to a reader; what is found at it is analysed elsewhere.
    const cases = new Set([...broken.map(([name]) => name), "cannot be read", "rate"]);
    expect([...troubleNames].filter((name) => !cases.has(name))).toEqual([]);
    const all = [
      ...broken.map(([trouble, found]) => ({ trouble, found }) as Trouble),
      { trouble: "cannot be read", found: undefined } as const,
      { trouble: "rate", found: { rate: 5 } } as const,
    ];
    for (const one of all) expect(troubleText(english, one)).toMatch(/Export|export|again/);
    for (const name of oddities) expect(english.odd[name]).toMatch(/\.$/);
  });
});
