import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Fault, Part } from "#core/parts/part.ts";
import { expectPrinted } from "#tests/reference/printed.ts";
import { controlled, faultAt, insideOf } from "./patched.ts";

const nothing = "0 0 0 0";
const mono = "0.5 0.5 0.5 0.5";

/** What each setting does to a stereo feed, in any box that has it: L←L, L←R, R←L, R←R. */
const does: Readonly<Partial<Record<FaultName, string>>> = {
  mono,
  "balance hard left": "1 0 0 0",
  "balance hard right": "0 0 0 1",
  "balance far to the left": "1 0 0 0.2",
  "balance far to the right": "0.2 0 0 1",
  "balance off to the left": "1 0 0 0.5",
  "balance off to the right": "0.5 0 0 1",
  "volume down": nothing,
  "power off": nothing,
  "battery flat": nothing,
  "polarity button on the left": "-1 0 0 1",
  "polarity button on the right": "1 0 0 -1",
  "left panned hard right": "0 0 1 1",
  "right panned hard left": "1 1 0 0",
  "left panned to the middle": "0.707 0 0.707 1",
  "right panned to the middle": "1 0.707 0 0.707",
  "both channels panned to the middle": "0.707 0.707 0.707 0.707",
  "both channels panned left": "1 1 0 0",
  "both channels panned right": "0 0 1 1",
  "left soloed": "1 0 1 0",
  "right soloed": "0 1 0 1",
  "left channel down": "0 0 0 1",
  "right channel down": "1 0 0 0",
  "pad in on the left channel": "0.1 0 0 1",
  "pad in on the right channel": "1 0 0 0.1",
  "main fader down": nothing,
  "monitor knob down": nothing,
  "send knob down": nothing,
  "dim on": "0.1 0 0 0.1",
  "call holds the output in mono": mono,
  "application fills the left side only": "0.5 0.5 0 0",
  "application fills the right side only": "0 0 0.5 0.5",
  "wrong output device": nothing,
  "wrong output pair": nothing,
  "direct monitor turned to the inputs": nothing,
  "left channel chosen for both": "1 0 1 0",
  "right channel chosen for both": "0 1 0 1",
  "blend turned away from the feed": nothing,
  "width turned up": "0.83 -0.58 -0.58 0.83",
  "width at nothing": mono,
  // Handbook, section 5: 'subscribed twice (1 0 1 0)'.
  "left side subscribed twice": "1 0 1 0",
  "right side subscribed twice": "0 1 0 1",
  "left side not subscribed": "0 0 0 1",
  "right side not subscribed": "1 0 0 0",
  "sides exchanged in the digital patch": "0 1 1 0",
  "nothing subscribed": nothing,
  "left side 0.3 ms late": "1 0 0 1",
  "left side 1 ms late": "1 0 0 1",
  "right side 0.3 ms late": "1 0 0 1",
  "right side 1 ms late": "1 0 0 1",
  "only the left input fed": "1 0 1 0",
  "tuned to another channel": nothing,
  "call profile in both ears": mono,
  "call profile in one ear": "0.5 0.5 0 0",
  "joined to another device": nothing,
  "left driver dead": "0 0 0 1",
  "right driver dead": "1 0 0 0",
  "left side of the input dead": "0 0 0 1",
  "right side of the input dead": "1 0 0 0",
};

/** Pairs of signals that a fault is about, where it is not about the first one of its box. */
const about: Readonly<Partial<Record<FaultName, string>>> = {
  "main fader down": "main",
  "monitor knob down": "monitor",
  "dim on": "monitor",
};

const boxes: readonly (readonly [PartKind, string, Settings])[] = [
  ["laptop", "", {}],
  ["phone", "", {}],
  ["sound interface", "", {}],
  ["player", "", {}],
  ["instrument", "", {}],
  ["mixer", "phones", {}],
  ["console", "phones", {}],
  ["headphone amplifier", "", { supply: "battery", balance: "fitted", blend: "fitted" }],
  ["processor", "", {}],
  ["transmitter", "", {}],
  ["belt pack", "", {}],
  ["link sender", "", {}],
  ["stage box", "", {}],
  ["personal mixer", "", {}],
  ["wireless headset", "", {}],
];

/** The two sides of a part inside, under faults. */
function sides(part: Part, pair: string, ...faults: Fault[]): number[] {
  const buses = insideOf(part, ...faults);
  return ["left", "right"].flatMap((side) => (buses[`${pair} ${side}`.trim()] ?? []).map(Number));
}

/** The pair of a box that a fault is about. */
function pairOf(kind: PartKind, first: string, name: FaultName): string {
  if (kind === "sound interface") return name === "monitor knob down" ? "line" : first;
  if (kind === "console" && name === "send knob down") return "mix";
  return about[name] ?? first;
}

describe.each(boxes)("%s", (kind, pair, settings) => {
  const part = catalogue[kind].make(settings);
  const faults = part.faults.filter(({ at }) => at === "settings");

  test("is straight through, and on time, while all is as it should be", () => {
    expectPrinted(sides(part, pair), "1.000 0 0 1.000");
    expect(part.late?.(controlled(part, [])) ?? 0).toBe(0);
  });

  test.each(faults.map((fault) => [fault.name, fault] as const))("%s", (name, fault) => {
    if (kind === "mixer" && name === "send knob down") {
      expect(insideOf(part).send).toEqual([1, 1]);
      expect(insideOf(part, fault).send).toEqual([0, 0]);
      return;
    }
    expectPrinted(sides(part, pairOf(kind, pair, name), fault), does[name] ?? "not in the table");
  });
});

test("of the sources, the sides of a computer and its interface leave at every socket alike", () => {
  const buses = insideOf(catalogue["sound interface"].make());
  expect(buses["line left"]).toEqual(buses.left);
  expect(buses["line right"]).toEqual(buses.right);
});

test("a transmitter whose inputs have no normal and one plug: left only", () => {
  const part = catalogue.transmitter.make({ input: "XLR pair" });
  const fault = faultAt(part, "settings", "only the left input fed");
  expect(sides(part, "", fault)).toEqual([1, 0, 0, 0]);
});

// Handbook, section 5: pulled to one side, fully by about 0.7 to 1 ms.
test.each(["stage box", "personal mixer"] as const)(
  "%s: which side is late, and by how much",
  (kind) => {
    const part = catalogue[kind].make();
    const late = (name: string) => part.late?.(controlled(part, [faultAt(part, "settings", name)]));
    expect(late("right side 0.3 ms late")).toBeCloseTo(0.0003, 9);
    expect(late("right side 1 ms late")).toBeCloseTo(0.001, 9);
    expect(late("left side 0.3 ms late")).toBeCloseTo(-0.0003, 9);
    expect(late("left side 1 ms late")).toBeCloseTo(-0.001, 9);
  },
);

// Handbook, section 4: 'main pair: level tied to the mains fader', 'monitor pair: own switches, often own volume'.
test("a mixer's main fader leaves its headphone socket and monitor pair alone, and its solo the main pair", () => {
  const part = catalogue.mixer.make();
  const fader = faultAt(part, "settings", "main fader down");
  expectPrinted(sides(part, "phones", fader), "1 0 0 1");
  expectPrinted(sides(part, "monitor", fader), "1 0 0 1");
  expectPrinted(sides(part, "main", faultAt(part, "settings", "left soloed")), "1 0 0 1");
  expectPrinted(sides(part, "monitor", faultAt(part, "settings", "left soloed")), "1 0 1 0");
});
