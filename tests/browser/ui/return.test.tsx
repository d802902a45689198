import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { clean } from "#tests/browser/support/clean.ts";
import { hookedUp, seenAs } from "#tests/browser/support/hooked-up.ts";
import { button, heading, keys, open, press } from "#tests/browser/support/open.tsx";
import { lineIn, measuredThrough, type Wire } from "#tests/browser/support/returned.ts";

beforeEach(() => seenAs("wide", "dark"));
afterEach(cleanup);

const body = () => document.body.textContent ?? "";
type Opened = Awaited<ReturnType<typeof hookedUp>>;

/** A press that starts a measurement, and what it comes to. */
async function measured({ measurer }: Opened, start: string, wire: Wire): Promise<void> {
  await press(start);
  if (measurer.world().doing === "finding the level")
    measurer.end({ ended: "found", found: "loud enough", level: -50 });
  await expect.element(heading()).toHaveTextContent("Measuring");
  measurer.reach(3, 11);
  await expect.poll(body).toContain("8 s left");
  measurer.end(measuredThrough(wire));
}

describe("through a lead", () => {
  test("against a good one: that first, then the one in question, and the next", async () => {
    const opened = await hookedUp("Measure with a sound card");
    await expect.element(heading()).toHaveTextContent("Put in a lead that is known to be good");
    await measured(opened, "Measure the good one", [1, 0, 0, 1]);
    await expect.element(heading()).toHaveTextContent("Now the lead in question");
    await clean("swap");
    await measured(opened, "Measure it", [1, -0.1, -0.1, 0.5]);
    await expect.element(heading()).toHaveTextContent("The right side is weaker");
    expect(body()).toContain("Right: 6.0 dB down, as sent.");
    expect(body()).toContain(
      "The right comes over into input 1, 20.0 dB under the left, upside down.",
    );
    expect(body()).toContain("Levels of left and right are against the healthy lead");
    expect(body()).toContain("The sleeve: not tested.");
    await tab.getByText("Noise, hum, distortion, delay").click();
    expect(body()).toContain("Rack interface: 2 channels, 48 kHz.");
    await clean("result");
    await measured(opened, "Measure the next one", [0, 0, 0, 1]);
    await expect.element(heading()).toHaveTextContent("The left side does not arrive");
    expect(opened.measurer.calls.filter(({ asked }) => asked === "findLevel")).toHaveLength(1);
  });

  test("as it comes: at once, and what that cannot show is said", async () => {
    const opened = await hookedUp("Measure with a sound card");
    await press(/^as it comes/);
    await measured(opened, "Measure it", [0.5, -0.5, -0.5, 0.5]);
    await expect.element(heading()).toHaveTextContent("Both ears get left minus right");
    expect(body()).toContain("What both sides lost together does not show.");
  });

  test("by one input it is half of it, and said so", async () => {
    const opened = await hookedUp("Measure with a sound card");
    await press(/^as it comes/);
    await press("Measure it");
    opened.measurer.end({ ended: "found", found: "loud enough", level: -50 });
    await expect.element(heading()).toHaveTextContent("Measuring");
    const whole = measuredThrough([1, 0.1, 0, 1]);
    if (whole.ended !== "measured") return;
    const channels = whole.capture.channels.slice(0, 1);
    opened.measurer.end({ ...whole, capture: { ...whole.capture, channels } });
    await expect.element(heading()).toHaveTextContent("Only one input was heard");
  });

  test("one that is not healthy will not do for a good one, and can be measured as it comes", async () => {
    const opened = await hookedUp("Measure with a sound card");
    await measured(opened, "Measure the good one", [0, 0, 0, 1]);
    await expect.element(heading()).toHaveTextContent("That one is not healthy");
    expect(body()).toContain("a side is missing");
    await clean("not healthy");
    await press("measure it as it comes");
    await expect.element(button("Measure it")).toBeVisible();
  });

  test("is refused with its reason: nothing there, or a browser that processes", async () => {
    const opened = await hookedUp("Measure with a sound card");
    await press(/^as it comes/);
    await measured(opened, "Measure it", [0, 0, 0, 0]);
    await expect.element(heading()).toHaveTextContent("It cannot be judged so");
    expect(body()).toContain("The signal is not there");
    expect(body()).toContain("See that the lead is in at both ends");
    await clean("refused");
    await measured(opened, "Measure again", [0, 0, 0, 0]);
    await expect.element(heading()).toHaveTextContent("It cannot be judged so");
    await press("Back to the hook-up");
    await press("Measure it");
    opened.measurer.end({ ended: "found", found: "as loud as it may be", level: -20 });
    await expect.element(heading()).toHaveTextContent("Measuring");
    const granted = { ...lineIn, processed: ["echoCancellation" as const] };
    opened.measurer.end(measuredThrough([1, 0, 0, 1], granted));
    await expect.poll(body).toContain("The browser cancels echoes on this input");
  });

  test("can be raised by hand, stopped by Esc, and says what befell it", async () => {
    const { measurer } = await hookedUp("Measure with a sound card");
    await press("I raise it by hand");
    measurer.change({ returned: { levels: [-61.2, -140], peak: -0.5 } });
    await expect.poll(body).toContain("Comes back, in 1: −61 dBFS, in 2: silent. Too much");
    await press("louder");
    expect(measurer.world().level).toBe(-47);
    await press("Measure at this level");
    await expect.element(heading()).toHaveTextContent("Measuring");
    await keys("{Escape}");
    await expect.element(button("Measure the good one")).toBeVisible();
    expect(measurer.world().doing).toBe("nothing");
    await press("I raise it by hand");
    measurer.fail("hidden");
    await expect.poll(body).toContain("The page was out of sight");
  });

  test("with the keyboard alone", async () => {
    const { recorder, measurer } = open();
    recorder.offer([{ id: "line", name: "Rack interface" }]);
    button("Measure with a sound card").element().focus();
    await keys("{Enter}");
    await expect.element(heading()).toHaveFocus();
    await keys("{Tab}{Enter}");
    await expect.element(heading()).toHaveTextContent("Out of which");
    await expect.element(heading()).toHaveFocus();
    button(/whatever the system records/)
      .element()
      .focus();
    await keys("{ArrowRight}{Enter}");
    button("Go on").element().focus();
    await keys("{Enter}");
    await expect.element(heading()).toHaveTextContent("known to be good");
    await expect.element(heading()).toHaveFocus();
    const box = tab.getByRole("checkbox", { name: /load box/ });
    box.element().focus();
    await keys("{Enter}");
    await expect.element(box).toBeChecked();
    await keys("{Enter}");
    await expect.element(box).not.toBeChecked();
    button("Measure the good one").element().focus();
    await keys("{Enter}");
    expect(measurer.calls.at(-1)).toMatchObject({
      asked: "findLevel",
      how: { input: { name: "Rack interface" } },
    });
  });
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test("every state is accessible, narrow", async () => {
    await seenAs("narrow", scheme);
    const opened = await hookedUp("Measure with a sound card");
    await clean("plugged in");
    await press(/^as it comes/);
    await measured(opened, "Measure it", [0.5, -0.5, -0.5, 0.5]);
    await expect.element(heading()).toHaveTextContent("Both ears get left minus right");
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("result");
  });
});
