import { describe, expect, test } from "vitest";
import { added } from "#core/drawing/adding.ts";
import { kindPut, leadPut, otherLeads, partSet } from "#core/drawing/changing.ts";
import { positionCopied } from "#core/drawing/copying.ts";
import { partNamed, positionMoved, positionNamed } from "#core/drawing/names.ts";
import { placesFor } from "#core/drawing/places.ts";
import { partRemoved, positionRemoved } from "#core/drawing/removing.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { called, refusalOf, rigOf, start, wayTo } from "./drawn.ts";

describe("names", () => {
  const rig = start("podcast table");

  test("a part is called by its new name everywhere, and known by its first", () => {
    const next = rigOf(partNamed(rig, "amplifier", "  desk amp "));
    expect(wayTo(next, "position 2")).toContain("desk amp");
    expect(next.parts.find(({ id }) => id === "desk amp")?.first).toBe("amplifier");
    expect(JSON.stringify(next)).not.toContain('"into":"amplifier"');
  });

  test.each([
    ["", "no name"],
    ["a, b", "marks in the name"],
    ["a: b", "marks in the name"],
    ["interface", "name taken"],
    ["position 1", "name taken"],
  ])("'%s' is refused: %s", (name, refused) => {
    expect(refusalOf(partNamed(rig, "amplifier", name))?.refused).toBe(refused);
  });

  test("positions have tapes of their own, and an order", () => {
    expect(refusalOf(positionNamed(rig, "position 1", "3 guest"))?.refused).toBe("name taken");
    const next = rigOf(
      positionMoved(rigOf(positionNamed(rig, "position 1", "1 Ida")), "position 1", 1),
    );
    expect(next.positions.map(({ name }) => name).slice(0, 2)).toEqual(["2 co-host", "1 Ida"]);
    expect(rigOf(positionMoved(rig, "position 1", -1))).toBe(rig);
  });
});

describe("what a part is", () => {
  const rig = start("podcast table");

  test("fewer outputs than are in use are refused, by who is plugged in", () => {
    expect(refusalOf(partSet(rig, "amplifier", "outputs", 3))).toEqual({
      refused: "socket in use",
      by: "headphones 4",
      socket: "output 4",
    });
  });

  test("a plug of the other size does not fit where it stands", () => {
    expect(refusalOf(partSet(rig, "headphones 1", "size", "3.5 mm"))?.refused).toBe("does not fit");
  });

  test("what is usual again is left out", () => {
    const set = rigOf(partSet(rig, "headphones 1", "ohms", 250));
    expect(rigOf(partSet(set, "headphones 1", "ohms", undefined))).toEqual(rig);
  });

  test("another kind stands in its place where its plug fits", () => {
    const next = rigOf(kindPut(start("one person"), "headphones", "in-ears", called));
    expect(next.parts[1]).toMatchObject({ id: "headphones", kind: "in-ears" });
    expect(refusalOf(kindPut(rig, "headphones 1", "wireless headset", called))?.refused).toBe(
      "nothing joins",
    );
  });

  test("another kind comes with as many sockets as are in use", () => {
    const stage = start("stage in-ears");
    const next = rigOf(kindPut(stage, "transmitter", "link sender", called));
    expect(next.parts.find(({ id }) => id === "transmitter")).toMatchObject({
      kind: "link sender",
      settings: { links: 4 },
    });
    expect(next.plugged).toHaveLength(stage.plugged.length);
  });

  test("an amplifier with four in use becomes a splitter of four by its own plug, and goes back on a lead", () => {
    const split = rigOf(kindPut(rig, "amplifier", "splitter", called));
    expect(split.parts.find(({ id }) => id === "amplifier")?.settings).toMatchObject({ sets: 4 });
    expect(wayTo(split, "position 3")).toEqual([
      "interface",
      "amplifier",
      "headphones 3",
      "position 3: listener",
    ]);
    const back = rigOf(kindPut(split, "amplifier", "headphone amplifier", called));
    expect(back.parts.find(({ id }) => id === "amplifier")?.settings).toEqual({ outputs: 4 });
    expect(wayTo(back, "position 3")).toEqual([
      "interface",
      "stereo jack lead",
      "amplifier",
      "headphones 3",
      "position 3: listener",
    ]);
  });

  test("a splitter with two in use becomes an amplifier, and their plugs its size", () => {
    const laptop = start("one person");
    const split = rigOf(
      added(
        laptop,
        "splitter",
        { place: "plug", end: { part: "headphones", plug: "plug" } },
        called,
      ),
    );
    const two = rigOf(positionCopied(split, "position 1"));
    const next = rigOf(kindPut(two, "splitter", "headphone amplifier", called));
    expect(next.positions).toEqual(two.positions);
    expect(next.parts.filter(({ kind }) => kind === "headphones")).toMatchObject([
      { settings: { size: "6.35 mm" } },
      { settings: { size: "6.35 mm" } },
    ]);
  });

  test("more than a kind has sockets for is refused", () => {
    const nine = rigOf(partSet(rig, "amplifier", "outputs", 9));
    const full = Array.from({ length: 5 }).reduce<Rig>(
      (now) => rigOf(positionCopied(now, "position 4")),
      nine,
    );
    expect(full.positions).toHaveLength(9);
    expect(refusalOf(kindPut(full, "amplifier", "splitter", called))).toEqual({
      refused: "nothing joins",
      kind: "splitter",
    });
  });

  test("a lead of another kind goes into the same sockets and their partners", () => {
    const room = start("rehearsal room");
    const kinds = otherLeads(room, "feed lead").map(({ kind }) => kind);
    expect(kinds).toContain("insert Y with TRS plugs, rings unused");
    const next = rigOf(leadPut(room, "feed lead", "insert Y with TRS plugs, rings unused"));
    expect(next.plugged.filter(({ part }) => part === "feed lead")).toHaveLength(3);
  });
});

describe("adding", () => {
  test("a source goes in front of a box that nothing feeds", () => {
    const room = start("rehearsal room");
    const bare = rigOf(partRemoved(room, "laptop"));
    expect(bare.parts.map(({ id }) => id)).not.toContain("laptop lead");
    expect(placesFor(build(bare), "phone")).toEqual([{ place: "box", part: "mixer" }]);
    const next = rigOf(added(bare, "phone", { place: "box", part: "mixer" }, called));
    expect(wayTo(next, "position 1").slice(0, 3)).toEqual([
      "pocket telephone",
      "insert Y lead",
      "mixer",
    ]);
  });

  test("a splitter goes between, and headphones into what is free", () => {
    const one = start("one person");
    const split = rigOf(
      added(one, "splitter", { place: "plug", end: { part: "headphones", plug: "plug" } }, called),
    );
    const places = placesFor(build(split), "headphones");
    expect(places).toEqual([{ place: "socket", spot: { into: "splitter", socket: "output 2" } }]);
    const [place] = places;
    if (place === undefined) throw new Error("no place");
    const two = rigOf(added(split, "headphones", place, called));
    expect(two.positions.map(({ name }) => name)).toEqual(["1 you", "2"]);
  });

  test("the last position stays", () => {
    expect(refusalOf(positionRemoved(start("one person"), "position 1"))?.refused).toBe(
      "last position",
    );
    expect(refusalOf(partRemoved(start("one person"), "laptop"))?.refused).toBe("last position");
  });
});
