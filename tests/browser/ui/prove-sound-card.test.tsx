import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { holding } from "#core/session/log.ts";
import { proving } from "../support/meter.ts";
import { button, heading, type open, press } from "../support/open.tsx";
import { measuredThrough, type Wire } from "../support/returned.ts";

afterEach(cleanup);

type Opened = ReturnType<typeof open>;
const body = () => document.body.textContent ?? "";
const readings = (opened: Opened) =>
  holding(opened.log()).filter(({ entry }) => entry === "finding").length;

describe("by sound card", () => {
  const wires = { good: [1, 0, 0, 1], swapped: [0, 1, 1, 0], odd: [1, 0, 0, -0.5] } as const;

  /** A press that starts a measurement, and what it comes to. */
  async function measured(opened: Opened, start: string, wire: Wire) {
    await press(start);
    if (opened.measurer.world().doing === "finding the level")
      opened.measurer.end({ ended: "found", found: "loud enough", level: -50 });
    await expect.element(heading()).toHaveTextContent("Measuring");
    opened.measurer.end(measuredThrough(wire));
  }

  test("a good one first, then one after the other, each with its result", async () => {
    const opened = await proving("TRS lead", "load box");
    opened.recorder.offer([{ id: "line", name: "Rack interface" }]);
    await expect.element(heading()).toHaveTextContent("Out of the sound card");
    expect(body()).toContain("A resistor of 33 Ω, 1 %, from the tip to a point");
    expect(body()).toContain("known to be good, plug that in first");
    await press("It is plugged in");
    await expect.element(heading()).toHaveTextContent("Out of which");
    await expect.element(heading()).toHaveFocus();
    await press("Rack interface");
    await press("Go on");
    await expect.element(tab.getByRole("img", { name: /into a load box/ })).toBeVisible();
    expect(body()).not.toContain("a load box stands before the inputs");
    await measured(opened, "Measure the good one", wires.good);
    await expect.element(heading()).toHaveTextContent("Now the lead in question");
    await measured(opened, "Measure it", wires.swapped);
    await expect.element(heading()).toHaveTextContent("Tip and ring are exchanged");
    await expect.poll(() => readings(opened)).toBe(1);
    expect(opened.log().at(-1)).toMatchObject({ finding: { asked: { check: "matrix" } } });
    await press("Another lead of the same kind");
    await press("It is plugged in");
    await expect.element(heading()).toHaveTextContent("Now the next lead");
    await expect.element(heading()).toHaveFocus();
    await measured(opened, "Measure it", wires.good);
    await expect.element(heading()).toHaveTextContent("As it should be");
  });

  test("what no fault of a lead explains is measured once more, the same lead, and told to be so", async () => {
    const opened = await proving("TRS lead", "load box");
    opened.recorder.offer([{ id: "line", name: "Rack interface" }]);
    await press("It is plugged in");
    await press("Go on");
    await measured(opened, "Measure the good one", wires.good);
    await measured(opened, "Measure it", wires.odd);
    await expect.element(heading()).toHaveTextContent("One side is upside down");
    expect(body()).toContain("Leave the lead in");
    expect(body()).not.toContain("The sleeve: not tested");
    await measured(opened, "Measure the same once more", wires.odd);
    await expect.element(heading()).toHaveTextContent("No fault of this lead goes with");
    expect(body()).not.toContain("as it is, most likely");
    expect(body()).not.toContain("Fresh air");
    await expect.element(button("Check again")).toBeVisible();
    await press("Settle it with a multimeter");
    await expect.element(heading()).toHaveTextContent("Touch the sleeve of A");
  });

  test("one input alone is no finding, and is said", async () => {
    const opened = await proving("TRS lead", "return");
    opened.recorder.offer([{ id: "line", name: "Rack interface" }]);
    await press("It is plugged in");
    await press("Go on");
    await press(/^as it comes/);
    await press("Measure it");
    opened.measurer.end({ ended: "found", found: "loud enough", level: -50 });
    await expect.element(heading()).toHaveTextContent("Measuring");
    const whole = measuredThrough(wires.good);
    if (whole.ended !== "measured") throw new Error("it was not measured");
    const channels = whole.capture.channels.slice(0, 1);
    opened.measurer.end({ ...whole, capture: { ...whole.capture, channels } });
    await expect.element(heading()).toHaveTextContent("Only one input was heard");
    expect(readings(opened)).toBe(0);
  });
});
