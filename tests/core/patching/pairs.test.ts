import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { type InputKind, inputKinds } from "#core/parts/inputs.ts";
import type { Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { candidates } from "#core/patching/candidates.ts";
import { type Ends, rigOf } from "#core/patching/patch.ts";
import { made } from "#core/patching/pieces.ts";
import { recommended } from "#core/patching/recommend.ts";
import { stagesOf, whereUnknown } from "#core/patching/stages.ts";
import { build, plugOf, socketOf } from "#core/rig/rig.ts";
import { ends } from "#tests/reference/feeds.ts";

const kindsWhere = (wanted: (kind: PartKind) => boolean): readonly PartKind[] =>
  (Object.keys(catalogue) as PartKind[]).filter(wanted);
const outputsOf = (kind: PartKind): readonly Socket[] =>
  catalogue[kind].make().sockets.filter(({ side }) => side === "out");

const sources = kindsWhere((kind) => catalogue[kind].family === "source");
const wires = kindsWhere((kind) =>
  ["lead", "adapter", "splitter"].includes(catalogue[kind].family),
);
const pairs = sources.flatMap((kind) => inputKinds.map((input) => [kind, input] as const));
const between = (kind: PartKind, input: InputKind): Ends =>
  ends(kind, {}, { input, supply: "mains-earthed" });

/** Why nothing can be recommended, where that is so. */
function reasonAgainst({ from, into }: Ends): string | undefined {
  const { takes, sockets } = made(into).made;
  if (takes.length < 2) return "one input takes one signal";
  const goesInto = (some: readonly Socket[]) => (kind: PartKind) =>
    catalogue[kind].make().plugs.some((plug) => some.some((socket) => fits(plug, socket)));
  const [out, inlet] = [outputsOf(from.kind), sockets.filter(({ side }) => side === "in")];
  return wires.some((kind) => goesInto(out)(kind) && goesInto(inlet)(kind))
    ? undefined
    : "no lead of the catalogue has a plug for either end";
}

test("from every source into every input of an amplifier: stereo is to be had, or there is a reason", () => {
  const without = pairs.flatMap(([kind, input]) => {
    const ways = between(kind, input);
    if (recommended(ways, "stereo").length > 0) return [];
    const reason = reasonAgainst(ways);
    console.log(`no stereo from a ${kind} into ${input}: ${reason}`);
    expect(reason, `${kind} into ${input}`).toBeDefined();
    return [`${kind}, ${input}`];
  });
  expect(without).toHaveLength(sources.length + 1);
  expect(without).toContain("player, XLR pair");
}, 60_000);

describe.each(pairs)("a %s into %s", (kind, input) => {
  test("every patch thought of: each plug of each wire in a socket of its own that it fits", () => {
    const ways = between(kind, input);
    const all = [...candidates(ways, "leads")];
    for (const patch of all) {
      const rig = build(rigOf(ways, patch, "output 1"));
      const places = patch.plugged.map(({ into, socket }) => `${into} ${socket}`);
      expect(new Set(places).size).toBe(places.length);
      expect(patch.plugged).toHaveLength(
        patch.wires.reduce((sum, { id }) => sum + rig.part(id).plugs.length, 0),
      );
      for (const { part, plug, into, socket } of patch.plugged)
        expect(fits(plugOf(rig.part(part), plug), socketOf(rig.part(into), socket))).toBe(true);
    }
    if (kind !== "player" || input !== "XLR pair") expect(all.length).toBeGreaterThan(0);
  });

  test("stereo: nothing strains an output where something does not; asked again, the same", () => {
    const first = recommended(between(kind, input), "stereo");
    const strained = first.map(({ prediction }) => prediction.strains.length > 0);
    expect(strained.some(Boolean) && strained.some((one) => !one)).toBe(false);
    if (input === "stereo jack") expect(recommended(between(kind, input), "stereo")).toEqual(first);
  });
});

/** Handbook, section 10: what must not be plugged into, whatever is wanted; and what would have been, had it been let. */
test("nothing leaves by a balanced headphone output", () => {
  const settings = { "balanced output": "fitted" };
  const ways: Ends = {
    from: { id: "source", kind: "headphone amplifier", settings },
    into: { id: "amplifier", kind: "headphone amplifier" },
    worn: { id: "headphones", kind: "headphones" },
  };
  const balanced = ["balanced left", "balanced right"];
  expect([...candidates(ways, "leads", balanced)].length).toBeGreaterThan(0);
  for (const want of ["stereo", "mono in both ears", "left ear only", "right ear only"] as const)
    expect(recommended(ways, want, balanced)).toEqual([]);
});

// Handbook, section 4: 'where unknown, TRS plugs with the ring unused; if silent or thin, ring to sleeve at the output end'.
describe("where the stage is not known", () => {
  const unsure = (kind: PartKind, want: "stereo" | "mono in both ears", sockets: string[]) =>
    whereUnknown(
      stagesOf(ends(kind)).map((stage) => ({
        stage,
        best: recommended(ends(kind, { balancing: stage }), want, sockets),
      })),
    );
  const kinds = (one: ReturnType<typeof unsure>) =>
    [one?.first, one?.otherwise].map((each) => each?.patch.wires.map(({ kind }) => kind));

  test("a pair of XLR outputs", () => {
    const told = unsure("console", "stereo", ["main left", "main right"]);
    expect(kinds(told)).toEqual([
      ["two XLR to TRS lead, pin 3 unused"],
      ["two XLR to TRS lead, pin 3 to pin 1"],
    ]);
    expect(told?.chance).toBeGreaterThan(0.8);
  });

  test("a mono send", () => {
    const told = unsure("mixer", "mono in both ears", ["send"]);
    expect(kinds(told)).toEqual([
      ["one-to-both lead with TRS plug, ring unused"],
      ["mono adapter", "TRS lead"],
    ]);
    expect(told?.first.prediction.strains).toEqual([]);
    expect(told?.otherwise?.prediction.strains).toEqual([]);
  });

  test("a box with one stage only has none to ask for", () => {
    expect(stagesOf(ends("phone"))).toEqual([]);
    expect(whereUnknown([])).toBeUndefined();
  });
});
