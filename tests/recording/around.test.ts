import { describe, expect, test } from "vitest";
import { chunk, format, letters, number, riff } from "./made.ts";
import { read } from "./read.ts";

describe("what stands around the samples", () => {
  const data = chunk("data", [0, 64, 0, 192]);
  const sound = [[0.5], [-0.5]];

  test.for<[string, Uint8Array]>([
    ["plain", riff([...format(), ...data])],
    [
      "odd chunks before, padded",
      riff([...chunk("bext", [1, 2, 3]), ...format(), ...chunk("JUNK", [9]), ...data]),
    ],
    [
      "an odd chunk whose padding was left out",
      riff([...letters("JUNK"), ...number(3, 4), 1, 2, 3, ...format(), ...data]),
    ],
    [
      "a chunk of 100 bytes after one whose padding was left out",
      riff([
        ...letters("JUNK"),
        ...number(1, 4),
        7,
        ...chunk("LIST", Array(100).fill(65)),
        ...format(),
        ...data,
      ]),
    ],
    ["chunks after", riff([...format(), ...data, ...chunk("LIST", [1, 2, 3])])],
    ["samples before their format", riff([...data, ...format()])],
    ["a wrong size of the whole", riff([...format(), ...data], { size: 7 })],
    [
      "BW64",
      riff(
        [
          ...chunk("ds64", [...number(64, 8), ...number(4, 8), ...number(1, 8), ...number(0, 4)]),
          ...format(),
          ...chunk("data", [0, 64, 0, 192], 2 ** 32 - 1),
        ],
        { name: "BW64", size: 2 ** 32 - 1 },
      ),
    ],
    [
      "sizes of others in a table",
      riff(
        [
          ...chunk("ds64", [
            ...number(0, 8),
            ...number(4, 8),
            ...number(1, 8),
            ...number(2, 4),
            ...letters("wide"),
            ...number(6, 8),
            ...letters("wide"),
            ...number(2, 8),
          ]),
          ...chunk("wide", [1, 2, 3, 4, 5, 6], 2 ** 32 - 1),
          ...chunk("wide", [1, 2], 2 ** 32 - 1),
          ...format(),
          ...chunk("data", [0, 64, 0, 192], 2 ** 32 - 1),
        ],
        { name: "RF64" },
      ),
    ],
    [
      "20 bits of 24, at the upper end",
      riff([...format({ bits: 20, frame: 6 }), ...chunk("data", [0, 0, 64, 0, 0, 192])]),
    ],
  ])("%s", async ([, bytes]) => {
    const { layout, channels } = await read(bytes);
    expect([layout.frames, layout.odd, channels]).toEqual([1, [], sound]);
  });

  test.for<[string, string, Uint8Array]>([
    [
      "length not written",
      "size 0, never patched",
      riff([...format(), ...chunk("data", [0, 64, 0, 192], 0)], { size: 2 ** 32 - 1 }),
    ],
    [
      "length not written",
      "all ones",
      riff([...format(), ...chunk("data", [0, 64, 0, 192], 2 ** 32 - 1)]),
    ],
    [
      "cut off",
      "more claimed than there",
      riff([...format(), ...chunk("data", [0, 64, 0, 192], 4e9)]),
    ],
    [
      "part of a frame",
      "three bytes more",
      riff([...format(), ...chunk("data", [0, 64, 0, 192, 1, 2, 3])]),
    ],
  ])("%s: %s", async ([odd, , bytes]) => {
    const { layout, channels } = await read(bytes);
    expect([layout.odd, channels]).toEqual([[odd], sound]);
  });

  test("what is no number is silence, and counted", async () => {
    const samples = new Float32Array([Number.NaN, Number.POSITIVE_INFINITY, 0.25, 1.5]);
    const inside = [...new Uint8Array(samples.buffer)];
    const found = await read(riff([...format({ code: 3, bits: 32 }), ...chunk("data", inside)]));
    expect([found.strange, found.channels]).toEqual([
      2,
      [
        [0, 0.25],
        [0, 1.5],
      ],
    ]);
  });
});
