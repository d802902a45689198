import { describe, expect, test } from "vitest";
import { added } from "#core/drawing/adding.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import { partRemoved, positionRemoved } from "#core/drawing/removing.ts";
import { replugged, spotsFor, unplugged } from "#core/drawing/replugging.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { called, refusalOf, rigOf, start, wayTo } from "./drawn.ts";

describe("from one person to a podcast table", () => {
  const one = start("draw your own");
  const amplified = rigOf(
    added(
      one,
      "headphone amplifier",
      { place: "plug", end: { part: "headphones", plug: "plug" } },
      called,
    ),
  );

  test("an amplifier goes in the way, on the plainest lead, and the headphones have a plug of its size", () => {
    expect(wayTo(amplified, "position 1")).toEqual([
      "laptop",
      "stereo jack lead",
      "headphone amplifier",
      "headphones",
      "position 1: listener",
    ]);
    expect(amplified.parts.find(({ id }) => id === "headphones")?.settings?.size).toBe("6.35 mm");
    expect(amplified.parts.find(({ id }) => id === "stereo jack lead")?.settings).toMatchObject({
      nearSize: "3.5 mm",
      farSize: "6.35 mm",
    });
  });

  test("a position copied takes the next output, and the fifth has the amplifier come with one more", () => {
    const copies = (count: number) =>
      Array.from({ length: count }).reduce<Rig>(
        (rig) => rigOf(positionCopied(rig, "position 1")),
        amplified,
      );
    const four = copies(3);
    expect(four.positions.map(({ name }) => name)).toEqual(["1 you", "4 you", "3 you", "2 you"]);
    expect(four.plugged.filter(({ into }) => into === "headphone amplifier")).toHaveLength(5);
    expect(four.parts.find(({ kind }) => kind === "headphone amplifier")?.settings?.outputs).toBe(
      4,
    );
    expect(
      copies(4).parts.find(({ kind }) => kind === "headphone amplifier")?.settings?.outputs,
    ).toBe(5);
  });

  test("tells where a copy takes an output more than was drawn", () => {
    const full = start("podcast table");
    const copy = positionCopied(full, "position 1");
    expect(copy).toMatchObject({ grown: { part: "amplifier", setting: "outputs", count: 5 } });
    const roomy = rigOf(positionRemoved(full, "position 2"));
    expect(positionCopied(roomy, "position 1")).toMatchObject({ grown: undefined });
  });

  test("what has no room is refused by name", () => {
    expect(refusalOf(positionCopied(one, "position 1"))).toEqual({
      refused: "nothing free",
      part: "laptop",
    });
  });

  test("the amplifier taken out again leaves the headphones where it was", () => {
    const back = rigOf(partRemoved(amplified, "headphone amplifier"));
    expect(back).toEqual(one);
  });
});

describe("a position that is copied", () => {
  test("brings the pack on its belt, and the transmitter one link more", () => {
    const rig = rigOf(positionCopied(start("stage in-ears"), "position 2"));
    const copy = rig.positions[2];
    expect(copy?.name).toBe("5 guitar");
    expect(wayTo(rig, copy?.id ?? "")).toContain("belt pack 5");
    expect(rig.plugged).toContainEqual({
      part: "belt pack 5",
      plug: "link",
      into: "transmitter",
      socket: "link 5",
    });
  });

  test("brings its adapter", () => {
    const rig = rigOf(positionCopied(start("rehearsal room"), "position 5"));
    expect(wayTo(rig, rig.positions[5]?.id ?? "")).toContain("adapter 2");
  });

  test("goes with all that is its own when it is removed", () => {
    const before = start("stage in-ears");
    const rig = rigOf(positionRemoved(before, "position 2"));
    expect(rig.parts.map(({ id }) => id)).not.toContain("belt pack 2");
    expect(rig.parts).toHaveLength(before.parts.length - 2);
  });
});

describe("a plug", () => {
  const rig = start("podcast table");

  test("goes into another socket; what stands there goes where it was", () => {
    const end = { part: "headphones 1", plug: "plug" };
    const next = rigOf(replugged(rig, end, { into: "amplifier", socket: "output 2" }));
    const at = (id: string) => next.plugged.find(({ part }) => part === id)?.socket;
    expect([at("headphones 1"), at("headphones 2")]).toEqual(["output 2", "output 1"]);
  });

  test("is offered the sockets of its own side", () => {
    const spots = spotsFor(build(start("small studio")), { part: "left lead", plug: "far" });
    expect(spots).toEqual([{ into: "amplifier", socket: "in right" }]);
    const out = spotsFor(build(rig), { part: "feed lead", plug: "near" });
    expect(out).toEqual([
      { into: "interface", socket: "line left" },
      { into: "interface", socket: "line right" },
    ]);
  });

  test("that does not fit is refused with both, in their sizes", () => {
    const edited = replugged(
      start("one person"),
      { part: "headphones", plug: "plug" },
      { into: "laptop", socket: "wireless" },
    );
    expect(refusalOf(edited)).toMatchObject({ refused: "does not fit", part: "headphones" });
  });

  test("a lead that would go round is refused", () => {
    const room = start("rehearsal room");
    const moved = replugged(
      room,
      { part: "laptop lead", plug: "stem" },
      { into: "mixer", socket: "phones" },
    );
    expect(refusalOf(moved)).toBeDefined();
  });

  test("somebody whose plug is pulled would hang from nothing, and is named", () => {
    const edited = unplugged(rig, { part: "headphones 3", plug: "plug" });
    expect(refusalOf(edited)).toMatchObject({
      refused: "cannot be",
      name: "3 guest",
      trouble: { trouble: "hangs from nothing" },
    });
  });

  test("one leg of a Y lead may hang in the air", () => {
    const leg = { part: "laptop lead", plug: "right" };
    expect(rigOf(unplugged(start("rehearsal room"), leg)).plugged).toHaveLength(11);
  });
});
