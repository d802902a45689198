import { describe, expect, test } from "vitest";
import { signalFile } from "#pack/pack.ts";
import { measuring, type Working } from "#worker/measuring.ts";

const ours = () => new File([signalFile("multitone", 48_000) as BlobPart], "evening.wav");

describe("a recording measured in the worker", () => {
  test("tells how far it is, and then what was made of it", async () => {
    const shares: number[] = [];
    const analysis = await measuring(ours(), (share) => shares.push(share)).analysis;
    expect(analysis).toMatchObject({
      file: { coding: "signed 24", channels: 2, rate: 48_000 },
      odd: [],
      found: 1,
      playings: [{ channels: [1, 2] }],
    });
    expect(shares.length).toBeGreaterThan(2);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
  });

  test("names what is wrong with a file", async () => {
    const file = new File(["Levels of tonight: all fine."], "levels.wav");
    const analysis = await measuring(file, () => undefined).analysis;
    expect(analysis).toEqual({ trouble: "other kind", found: "text" });
  });

  test("is ended at once", async () => {
    const working: Working = measuring(ours(), () => undefined);
    working.stop();
    expect(await working.analysis).toBeUndefined();
  });
});
