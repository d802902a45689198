import { describe, expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import { contactsJoined } from "#core/parts/contacts-joined.ts";
import type { Ends } from "#core/patching/patch.ts";
import { type Recommendation, recommended } from "#core/patching/recommend.ts";
import type { Want } from "#core/patching/wants.ts";
import { build, type RigPart } from "#core/rig/rig.ts";
import { byLead, ends, forked, mains, predicted, single } from "#tests/reference/feeds.ts";

const mixer = (balancing: string, legOhms = 0) => ends("mixer", { balancing, "leg ohms": legOhms });
const kinds = (one: Recommendation | undefined) => one?.patch.wires.map(({ kind }) => kind);
const both = [...mains];

/** A row of the handbook's section 4 that is wrong, and what ought to be done with the same sockets instead. */
interface Wrong {
  readonly row: string;
  readonly between: Ends;
  readonly lead: PartKind;
  readonly plugs: Parameters<typeof byLead>[1];
  readonly want: Want;
  readonly sockets: readonly string[];
  readonly cure: readonly PartKind[];
}

const sent = (balancing: string, cure: readonly PartKind[]): Wrong => ({
  row: `${balancing} send by TRS lead`,
  between: mixer(balancing),
  lead: "TRS lead",
  plugs: single("send"),
  want: "mono in both ears",
  sockets: ["send"],
  cure,
});
const jack = (balancing: string, cure: PartKind): Wrong => ({
  ...sent(balancing, [cure]),
  row: `one jack of a pair, ${balancing}, by TRS lead`,
  plugs: single("main right"),
  want: "stereo",
  sockets: both,
});
const pair = (balancing: string, lead: PartKind, cure: PartKind): Wrong => ({
  ...jack(balancing, cure),
  row: `both jacks, ${balancing}, by ${lead}`,
  lead,
  plugs: forked(...mains),
});

const unused = "insert Y with TRS plugs, rings unused";
const wrong: readonly Wrong[] = [
  sent("impedance-balanced", ["mono adapter", "TRS lead"]),
  sent("actively balanced", ["one-to-both lead with TRS plug, ring unused"]),
  sent("cross-coupled", ["mono adapter", "TRS lead"]),
  sent("transformer", ["mono adapter", "TRS lead"]),
  sent("quasi-balanced", ["mono adapter", "TRS lead"]),
  jack("impedance-balanced", "insert Y"),
  jack("actively balanced", unused),
  pair("actively balanced", "insert Y", unused),
  pair("cross-coupled", unused, "insert Y"),
  pair("transformer", unused, "insert Y"),
  {
    ...sent("impedance-balanced", ["TRS lead"]),
    row: "one stereo socket by TS lead",
    lead: "TS lead",
    plugs: single("phones"),
    want: "stereo",
    sockets: ["phones"],
  },
];

/** Handbook, section 4: what is wrong there, and its cure, both out of the circuit. */
describe("the cure for what is wrong in the handbook's table", () => {
  test.each(wrong)("$row: $cure", ({ between, lead, plugs, want, sockets, cure }) => {
    const before = predicted(between, byLead(lead, plugs));
    const all = recommended(between, want, sockets);
    const [first] = all;
    expect(kinds(first)).toEqual(cure);
    expect(first?.prediction.strains).toEqual([]);
    expect(first?.prediction.tone).toBe("even");
    const mended =
      before.strains.length > 0 ||
      before.effect !== first?.prediction.effect ||
      betterBy(first, before.level) > 6;
    expect(mended).toBe(true);
  });

  test.each(["impedance-balanced", "actively balanced", "cross-coupled", "transformer"])(
    "a mono send, %s: one lead from its tip to tip and ring is among the cures",
    (balancing) => {
      const all = recommended(mixer(balancing), "mono in both ears", ["send"]);
      const one = all.find(({ patch }) => patch.wires.length === 1);
      const [lead] = one?.patch.wires ?? [];
      expect(lead && tipsOf(lead)).toEqual(["far tip", "far ring"]);
    },
  );
});

/** Decibels that the cure has over what it cures. */
const betterBy = (cure: Recommendation | undefined, [before]: readonly [number, number]): number =>
  (cure?.prediction.level[0] ?? Number.NEGATIVE_INFINITY) - before;

/** Where the tip of a lead's near end goes. */
function tipsOf(lead: RigPart): readonly string[] {
  const part = build({ name: "lead", parts: [lead], plugged: [], positions: [] }).part(lead.id);
  const tip = contactsJoined(part).find(({ at, contact }) => at === "near" && contact === "tip");
  return tip?.to.map(({ at, contact }) => `${at} ${contact}`) ?? [];
}

const worn = (kind: PartKind, settings = {}): RigPart => ({ id: "worn", kind, settings });

/** Common practice, no source: what a practitioner would reach for. */
describe("headphones straight into an output", () => {
  test.each([
    ["mixer", worn("headphones"), []],
    ["mixer", worn("headphones", { size: "3.5 mm" }), ["size adapter"]],
    ["phone", worn("headphones"), ["size adapter"]],
    ["phone", worn("in-ears"), []],
    ["phone", worn("headset"), []],
    ["phone", worn("headset", { "pin order": "common on sleeve" }), ["headset adapter"]],
    ["laptop", worn("wireless headset"), []],
    ["transmitter", worn("wireless headset"), []],
  ] as const)("%s, %j", (kind, into, cure) => {
    const [first] = recommended({ from: { id: "source", kind }, into }, "stereo");
    expect(kinds(first)).toEqual(cure);
    expect(first?.prediction.tone).toBe("even");
  });
});

describe("what is recommended first", () => {
  test.each([
    ["mixer", "stereo jack", ["TRS lead"]],
    ["sound interface", "stereo jack", ["TRS lead"]],
    ["laptop", "XLR pair", ["two XLR to TRS lead, pin 3 to pin 1"]],
    ["player", "RCA pair", ["RCA pair lead"]],
    ["player", "stereo jack", ["TRS to two RCA lead"]],
    ["instrument", "left and right jacks", ["insert Y"]],
  ] as const)("from a %s into %s: %j", (kind, input, cure) => {
    expect(kinds(recommended(ends(kind, {}, { input }), "stereo")[0])).toEqual(cure);
  });

  test("plugs stand in the sockets of their own side, and a lead's near end at the output", () => {
    const [first] = recommended(ends("player", {}, { input: "RCA pair" }), "stereo");
    expect(
      first?.patch.plugged.map(({ plug, into, socket }) => `${plug}: ${into} ${socket}`),
    ).toEqual(
      expect.arrayContaining([
        "near left: source left",
        "near right: source right",
        "far left: amplifier in left",
        "far right: amplifier in right",
      ]),
    );
  });

  test("cold legs of cross-coupled and transformer XLR outputs go to the screen", () => {
    for (const balancing of ["cross-coupled", "transformer"]) {
      const [first] = recommended(ends("console", { balancing }), "stereo", both);
      expect(kinds(first)).toEqual(["two XLR to TRS lead, pin 3 to pin 1"]);
    }
    const [active] = recommended(ends("console"), "stereo", both);
    expect(kinds(active)).toEqual(["two XLR to TRS lead, pin 3 unused"]);
  });
});
