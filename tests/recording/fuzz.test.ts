import fc from "fast-check";
import { expect, test } from "vitest";
import { english } from "#recording/english.ts";
import { troubleText } from "#recording/words.ts";
import { chunk, format, letters, number, riff } from "./made.ts";
import { readAll } from "./read.ts";
import { inMemory } from "./slices.ts";

const sound = Array.from({ length: 600 }, (_, at) => (at * 37) % 256);
const ds64 = chunk("ds64", [
  ...number(700, 8),
  ...number(600, 8),
  ...number(150, 8),
  ...number(1, 4),
  ...letters("wide"),
  ...number(6, 8),
]);

/** Sound files of every make. */
const files: readonly Uint8Array[] = [
  riff([...format(), ...chunk("data", sound)]),
  riff([...format({ code: 3, bits: 64 }), ...chunk("LIST", [1, 2, 3]), ...chunk("data", sound)]),
  riff([...format({ channels: 8, bits: 24 }), ...chunk("data", sound, 2 ** 32 - 1)]),
  riff(
    [
      ...ds64,
      ...chunk("wide", [1, 2, 3, 4, 5, 6], 2 ** 32 - 1),
      ...format({
        code: 0xff_fe,
        more: [
          ...number(22, 2),
          ...number(16, 2),
          ...number(3, 4),
          1,
          0,
          ...number(0, 4),
          16,
          0,
          128,
          0,
          0,
          170,
          0,
          56,
          155,
          113,
        ],
      }),
      ...chunk("data", sound, 2 ** 32 - 1),
    ],
    { name: "RF64" },
  ),
];

/** A file of which some bytes of the head are others, some are put in or left out, and the end may be missing. */
const mutated = fc
  .record({
    file: fc.constantFrom(...files),
    changes: fc.array(
      fc.record({
        at: fc.nat({ max: 180 }),
        by: fc.oneof(
          fc.uint8Array({ minLength: 1, maxLength: 8 }),
          fc.constantFrom(Uint8Array.from([255, 255, 255, 255]), new Uint8Array(4)),
        ),
        gone: fc.nat({ max: 8 }),
      }),
      { maxLength: 4 },
    ),
    end: fc.option(fc.nat({ max: 760 }), { freq: 2 }),
  })
  .map(({ file, changes, end }) => {
    const bytes = changes.reduce<readonly number[]>(
      (whole, { at, by, gone }) => [...whole.slice(0, at), ...by, ...whole.slice(at + gone)],
      [...file],
    );
    return Uint8Array.from(end === null ? bytes : bytes.slice(0, end));
  });

const soundly = async (bytes: Uint8Array, count: { read: number; named: number }) => {
  const { slices, asked } = inMemory(bytes);
  const found = await readAll(slices);
  // A thousand chunks of two reads, and the samples once: no more than the file has, whatever it claims.
  expect(asked.reads).toBeLessThan(2100);
  expect(asked.most).toBeLessThanOrEqual(Math.max(1024, bytes.length));
  if ("trouble" in found) {
    expect(troubleText(english, found)).toMatch(/\.$/);
    count.named += 1;
    return;
  }
  count.read += 1;
  expect(found.ended).toBeUndefined();
  const { frames, frame, channels } = found.layout;
  expect(frames * frame).toBeLessThanOrEqual(bytes.length);
  expect([channels >= 1 && channels <= 8, frames > 0]).toEqual([true, true]);
  for (const channel of found.channels) {
    expect(channel.length).toBe(frames);
    expect(channel.every(Number.isFinite)).toBe(true);
  }
};

test("whatever is done to a file, it is read or named, in bounded memory, and it ends", async () => {
  const count = { read: 0, named: 0 };
  const property = fc.asyncProperty(mutated, (bytes) => soundly(bytes, count));
  await fc.assert(property, { numRuns: 3000 });
  expect(count.read).toBeGreaterThan(500);
  expect(count.named).toBeGreaterThan(500);
});

test("any bytes at all, and any bytes after a head", async () => {
  const any = fc.uint8Array({ maxLength: 400 });
  const headed = any.map((bytes) => Uint8Array.from([...riff([]), ...bytes]));
  const property = fc.asyncProperty(fc.oneof(any, headed), (bytes) =>
    soundly(bytes, { read: 0, named: 0 }),
  );
  await fc.assert(property, { numRuns: 2000 });
});
