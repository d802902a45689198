import { describe, expect, test } from "vitest";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { SocketKind } from "#core/parts/plugs.ts";
import { type PinOrder, pinOrders } from "#core/parts/slips.ts";
import { relativeGains } from "#core/rig/ear-matrix.ts";
import { effectOf } from "#core/rig/effect.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { expectPrinted, gains } from "#tests/reference/printed.ts";
import { faultsOf, heard, seat, wornOn } from "./worn.ts";

const inSocket = (socket: SocketKind, order: PinOrder, microphone = 1500) =>
  wornOn("headset", { "pin order": order, microphone }, { socket });

const effect = (rig: ReturnType<typeof wornOn>, ...names: FaultName[]) =>
  effectOf(relativeGains(rig, seat, faultsOf(rig, ...names)));

/** What is in both sides, at the left ear. */
const middle = (rig: ReturnType<typeof wornOn>, ...names: FaultName[]) => {
  const [ll = 0, lr = 0] = gains(heard(rig, names));
  return ll + lr;
};

// Handbook, section 2: 'one of them in a three-pole socket may be hollow or fine, by where the sleeve spring sits; the other is fine'.
test.each([
  ["TRS", "common on ring 2", "hollow"],
  ["TRS", "common on sleeve", "fine"],
  ["TRS with a deep spring", "common on ring 2", "fine"],
  ["TRS with a deep spring", "common on sleeve", "fine"],
  ["four-pole, common on ring 2", "common on ring 2", "fine"],
  ["four-pole, common on ring 2", "common on sleeve", "hollow"],
  ["four-pole, common on sleeve", "common on ring 2", "hollow"],
  ["four-pole, common on sleeve", "common on sleeve", "fine"],
] as const)("in a %s socket, %s: %s", (socket, order, heardAs) => {
  const rig = inSocket(socket, order);
  const [ll = 0, lr = 0] = gains(heard(rig));
  if (heardAs === "fine") {
    expectPrinted([ll, lr], "+.746 -.008");
    return;
  }
  expect(lr / ll).toBeLessThan(-0.9);
});

describe("in a three-pole socket, the return through the microphone", () => {
  // Handbook, section 5 (C).
  test("of 1.5 kilohms", () =>
    expectPrinted(gains(heard(inSocket("TRS", "common on ring 2"))), "+.383 -.372 -.372 +.383"));

  // Handbook, section 2 (C), against the same set with its return.
  test.each([
    [300, "-23"],
    [600, "-29"],
    [1500, "-37"],
    [2200, "-40"],
  ])("of %i ohms leaves the middle at %s dB", (ohms, printed) => {
    const healthy = middle(inSocket("TRS", "common on sleeve", ohms));
    const through = middle(inSocket("TRS", "common on ring 2", ohms));
    expectPrinted([toDecibels(through / healthy)], printed);
  });

  test("comes back while the button is held", () => {
    const rig = inSocket("TRS", "common on ring 2");
    expectPrinted(gains(heard(rig, ["microphone button stuck"])), "+.744 -.010 -.010 +.744", 0.002);
  });
});

test.each(pinOrders)(
  "a set of the other kind is hollow where the right one is fine: %s",
  (order) => {
    const rig = inSocket(`four-pole, ${order}`, order);
    expect(effect(rig)).toBe("straight");
    expect(effect(rig, "pin order of the other kind")).toBe("difference");
    expect(effect(rig, "pin order of the other kind", "microphone button stuck")).toBe("straight");
  },
);

test.each(pinOrders)("two wrong orders are a right one: %s", (order) => {
  const other = pinOrders.find((one) => one !== order) ?? order;
  const rig = inSocket(`four-pole, ${order}`, other);
  expect(effect(rig)).toBe("difference");
  expect(effect(rig, "pin order of the other kind")).toBe("straight");
});

test("at a healthy socket nobody hears the microphone's own faults", () => {
  const rig = inSocket("four-pole, common on ring 2", "common on ring 2");
  for (const name of ["microphone button stuck", "microphone open"] as const)
    expectPrinted(gains(heard(rig, [name])), "+.746 -.008 -.008 +.746");
});

test.each(pinOrders)("its return open is a lost return, whichever contact it is: %s", (order) => {
  expect(effect(inSocket(`four-pole, ${order}`, order), "return open")).toBe("difference");
});
