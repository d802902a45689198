import { describe, expect, test } from "vitest";
import type { Circuit } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { sleeve } from "#core/parts/boxes.ts";
import type { Part } from "#core/parts/part.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { midband } from "#core/rig/midband.ts";
import { type BuiltRig, build, type Rig } from "#core/rig/rig.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Ohms } from "#core/units/units.ts";
import { both, changedRig, faultOf, withOhms } from "./changed-rig.ts";
import { expectPrinted, gains } from "./printed.ts";

const set = "headphones 1";
const copy = (number: number) => `headphones ${number}`;

/** All sets hang on the springs of one three-pole socket; the spring for a microphone would join their returns once more. */
const threePole = (part: Part): Part => ({
  ...part,
  sockets: part.sockets.map((socket) => ({
    ...socket,
    kind: "TRS",
    circuit: [
      ...socket.circuit.filter(({ name }) => !/bush|microphone/.test(name)),
      sleeve(socket.name),
    ],
  })),
});

/** So many sets on one output with no amplifier between; the first has the fault, if any. */
function group(source: Ohms, sets: number, fault?: string): Circuit {
  const laptop = both(withOhms({ "phones tip": source, "phones ring": source }), threePole);
  const rig = changedRig(straightIn, { laptop });
  const faults = fault === undefined ? [] : [faultOf(rig, `${set} / body / ${fault}`)];
  const good = stretchInto(rig, set, []).circuit.filter(({ name }) => name.startsWith(set));
  const named = (text: string, to: number) => text.replace(set, copy(to));
  const others = Array.from({ length: sets - 1 }, (_, index) =>
    good.map((element) => ({
      ...element,
      name: named(element.name, index + 2),
      a: named(element.a, index + 2),
      b: named(element.b, index + 2),
    })),
  );
  return [...stretchInto(rig, set, faults).circuit, ...others.flat()];
}

/** L←L, L←R, R←L, R←R of one set of a group. */
function gainsAt(circuit: Circuit, number: number): number[] {
  const voltages = solve(circuit, midband, ["left", "right"]);
  return ["left", "right"].flatMap((side) =>
    voltages.map(
      (volts) =>
        volts(`${copy(number)}: ${side} plus`).re - volts(`${copy(number)}: ${side} minus`).re,
    ),
  );
}

/** Handbook, section 5, 'passive groups load each other' (C): computed by nodal analysis in a SPICE simulator. */
describe("sets of 32 ohms on one output", () => {
  test.each([
    [1, "0.400"],
    [2, "0.252"],
    [4, "0.145"],
  ])("%i on 47 ohms: %s", (sets, printed) => {
    const [left = 0, , , right = 0] = gainsAt(group(47, sets), sets);
    expectPrinted([left, right], `${printed} ${printed}`);
  });

  test.each([
    [47, "-19.6"],
    [10, "-16.3"],
    [1, "-6.5"],
  ])(
    "ring-sleeve short in one of four on %i ohms: the neighbours' right at %s dB",
    (source, printed) => {
      const healthy = gainsAt(group(source, 4), 4);
      const beside = gainsAt(group(source, 4, "ring and sleeve shorted"), 4);
      expectPrinted([toDecibels((beside[3] ?? 0) / (healthy[3] ?? 0))], printed);
      expectPrinted([beside[0] ?? 0], (healthy[0] ?? 0).toFixed(2));
    },
  );

  test("tip-ring short in one of four on 47 ohms: its neighbours are mono", () => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = gainsAt(group(47, 4, "tip and ring shorted"), 4);
    for (const [own, other] of [
      [ll, lr],
      [rr, rl],
    ] as const)
      expect(Math.abs(toDecibels(own / other))).toBeLessThan(1.5);
  });
});

/** The same sets on a splitter of the catalogue, as short and thick as its parameters allow: its contacts are all there is of it. */
function split(source: Ohms, sets: number): BuiltRig {
  const numbers = Array.from({ length: sets }, (_, index) => index + 1);
  const small = { size: "3.5 mm" };
  const rig: Rig = {
    name: "splitter",
    parts: [
      { id: "laptop", kind: "laptop", settings: { socket: "TRS", "output ohms": source } },
      {
        id: "splitter",
        kind: "splitter",
        settings: { ...small, sets: Math.max(2, sets), metres: 0.05, gauge: 4, joint: 0.001 },
      },
      ...numbers.map(
        (number) => ({ id: copy(number), kind: "headphones", settings: small }) as const,
      ),
    ],
    plugged: [
      { part: "splitter", plug: "plug", into: "laptop", socket: "phones" },
      ...numbers.map((number) => ({
        part: copy(number),
        plug: "plug",
        into: "splitter",
        socket: `output ${number}`,
      })),
    ],
    positions: numbers.map((number) => ({
      id: `position ${number}`,
      name: `${number}`,
      wears: copy(number),
    })),
  };
  return build(rig);
}

describe("sets of 32 ohms on a real splitter", () => {
  const at = (rig: BuiltRig, number: number, ...faults: string[]) =>
    gains(
      earMatrix(
        rig,
        `position ${number}`,
        faults.map((name) => faultOf(rig, name)),
      ),
    );

  test.each([
    [1, "0.400"],
    [2, "0.252"],
    [4, "0.145"],
  ])("%i on 47 ohms: %s", (sets, printed) => {
    const [left = 0, , , right = 0] = at(split(47, sets), sets);
    expectPrinted([left, right], `${printed} ${printed}`);
  });

  // The splitter's own plug is one contact of 0.05 ohm more in what all sets share: beside 1 ohm that is a third of a decibel.
  test.each([
    [47, "-19.6", 0],
    [10, "-16.3", 0],
    [1, "-6.5", 0.35],
  ])("ring-sleeve short in one of four on %i ohms: %s dB", (source, printed, more) => {
    const rig = split(source, 4);
    const healthy = at(rig, 4)[3] ?? 0;
    const beside = at(rig, 4, `${set} / body / ring and sleeve shorted`)[3] ?? 0;
    expectPrinted([toDecibels(beside / healthy)], printed, more);
  });

  test("a plug with two contacts in one of four takes the neighbours' right down further, with no lead to soften it", () => {
    const rig = split(47, 4);
    const edits = [{ edit: "plug", plug: "plug", kind: "TS" }] as const;
    const twoContacts = { ...faultOf(rig, `${set} / plug / not home, first click`), edits };
    const healthy = at(rig, 4)[3] ?? 0;
    const [, , , right = 0] = gains(earMatrix(rig, "position 4", [twoContacts]));
    expect(toDecibels(right / healthy)).toBeLessThan(-19.6);
  });

  test("a tip-ring short in one makes its neighbours mono", () => {
    const [ll = 0, lr = 0, rl = 0, rr = 0] = at(
      split(47, 4),
      4,
      `${set} / body / tip and ring shorted`,
    );
    for (const [own, other] of [
      [ll, lr],
      [rr, rl],
    ] as const)
      expect(Math.abs(toDecibels(own / other))).toBeLessThan(1.5);
  });
});
