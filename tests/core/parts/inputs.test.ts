import { describe, expect, test } from "vitest";
import { catalogue } from "#core/parts/catalogue.ts";
import type { InputKind } from "#core/parts/inputs.ts";
import type { Part } from "#core/parts/part.ts";
import { expectPrinted, gains, levels } from "#tests/reference/printed.ts";
import { faultAt, insideOf, patched } from "./patched.ts";

const laptop = catalogue.laptop.make({ socket: "TRS", "output ohms": 22, supply: "mains-earthed" });
const amplifier = (input: InputKind, supply = "mains-earthed"): Part =>
  catalogue["headphone amplifier"].make({ input, supply });

const left = (to: string) => ["phones.tip", to] as const;
const right = (to: string) => ["phones.ring", to] as const;
const common = (...to: string[]) => to.map((node) => ["phones.sleeve", node] as const);
const feed = (to: Part, wires: readonly (readonly [string, string])[], fault?: string) =>
  gains(
    patched(
      {
        from: laptop,
        to,
        wires,
        ...(fault === undefined ? {} : { fault: ["to", faultAt(to, "in left", fault)] as const }),
      },
      "left",
      "right",
    ),
  );

const twoJacks = [
  left("in left.tip"),
  right("in right.tip"),
  ...common("in left.sleeve", "in right.sleeve"),
];

describe("a stereo feed, each side to its own input", () => {
  test.each([
    ["stereo jack", [left("in.tip"), right("in.ring"), ...common("in.sleeve")]],
    ["left and right jacks", twoJacks],
    ["RCA pair", twoJacks],
    ["balanced left and right jacks", [...twoJacks, ...common("in left.ring", "in right.ring")]],
    [
      "XLR pair",
      [
        left("in left.pin 2"),
        right("in right.pin 2"),
        ...common("in left.pin 1", "in left.pin 3", "in right.pin 1", "in right.pin 3"),
      ],
    ],
  ] as const)("%s: stereo", (input, wires) => {
    expectPrinted(feed(amplifier(input), wires), ".998 0 0 .998");
  });
});

// Handbook, section 5: 'a stereo feed into one balanced input takes the difference'.
test("a stereo feed into one balanced jack is left less right, the same on both sides", () => {
  const box = amplifier("one balanced jack");
  const wires = [left("in.tip"), right("in.ring"), ...common("in.sleeve")];
  expectPrinted(feed(box, wires), "1.00 -1.00", 0.003);
  expect(insideOf(box)).toEqual({ left: [1], right: [1] });
});

// Handbook, section 2: 'used with one plug only it gives 1 0 1 0'.
describe("a pair of jacks with the left normalled to the right", () => {
  const box = amplifier("left and right jacks");
  const one = [left("in left.tip"), ...common("in left.sleeve")];

  test("with one plug: the left programme in both", () => {
    expectPrinted(feed(box, one), "1.00 0 1.00 0", 0.005);
  });

  test("an oxidised normal: left only; with both plugs nothing is heard of it", () => {
    expectPrinted(feed(box, one, "normal does not close"), "1.00 0 0 0", 0.005);
    expectPrinted(feed(box, twoJacks, "normal does not close"), ".998 0 0 .998");
  });

  test("one that stays closed: both sides in both", () => {
    expectPrinted(feed(box, twoJacks, "normal does not open"), ".50 .50 .50 .50", 0.005);
  });

  test("RCA and XLR have none", () => {
    expectPrinted(feed(amplifier("RCA pair"), one), "1.00 0 0 0", 0.005);
  });
});

// Handbook, section 5: 'lost sleeve, both boxes mains-earthed: stereo stays', floating: the middle thin and distant.
test.each([
  ["mains-earthed", 0, -0.1],
  ["floating", -30, 0.5],
])("the return spring of a stereo input gone, the box %s", (supply, middle, within) => {
  const to = amplifier("stereo jack", supply);
  const wires = [left("in.tip"), right("in.ring"), ...common("in.sleeve")];
  const fault = faultAt(to, "in", "return spring of the socket worn");
  const [row = []] = patched({ from: laptop, to, wires, fault: ["to", fault] }, "left", "right");
  const sum = row.reduce((all, { re, im }) => ({ re: all.re + re, im: all.im + im }), {
    re: 0,
    im: 0,
  });
  const [level = Number.NaN] = levels([[sum]]);
  expect(Math.abs(level - middle)).toBeLessThan(Math.abs(within));
});

test.each([600, 10_000, 47_000])("an input of %i Ω loads what feeds it", (ohms) => {
  const to = catalogue["headphone amplifier"].make({ "input ohms": ohms, supply: "mains-earthed" });
  const wires = [left("in.tip"), right("in.ring"), ...common("in.sleeve")];
  expect(feed(to, wires)[0]).toBeCloseTo(ohms / (ohms + 22), 3);
});
