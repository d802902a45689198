import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { bent, hear, stream } from "#tests/browser/support/bent.ts";
import { clean } from "#tests/browser/support/clean.ts";
import { hookedUp, seenAs } from "#tests/browser/support/hooked-up.ts";
import { button, heading, keys, open, press } from "#tests/browser/support/open.tsx";
import { lineIn } from "#tests/browser/support/returned.ts";

beforeEach(() => seenAs("wide", "dark"));
afterEach(cleanup);

const body = () => document.body.textContent ?? "";
const still = stream(1.5);
const faults = [bent("tip open", 2.5, 0.012), bent("ring open", 3.5, 0.3)];
const bending = stream(4.2, faults);
type Opened = Awaited<ReturnType<typeof hookedUp>>;

/** To where it watches: the level was found, and a second of holding still is over. */
async function watching(opened: Opened, samples = still): Promise<void> {
  const { measurer } = opened;
  await press("Start quietly");
  await expect.element(heading()).toHaveTextContent("Finding the level");
  measurer.end({ ended: "found", found: "loud enough", level: -38 });
  await expect.element(heading()).toHaveTextContent("Hold it still");
  measurer.open(lineIn);
  hear(measurer, samples, { to: 1.5 });
  await expect.element(heading()).toHaveTextContent("Bend it, from plug 1 to plug 2");
}

describe("before it watches", () => {
  test("the names are asked for on a step of their own, or done without", async () => {
    const { recorder, measurer } = open();
    recorder.offer("not allowed");
    await press("Bend a lead and watch");
    await expect.element(heading()).toHaveTextContent("by name");
    await clean("names");
    await press("Ask for the names");
    await expect.poll(body).toContain("did not let the names be seen");
    await press("go on with the system's own");
    await press("Go on");
    await expect.element(heading()).toHaveTextContent("Put the lead between");
    expect(measurer.calls.some(({ asked }) => asked === "findLevel")).toBe(false);
  });

  test("both ends are chosen, kept for the next time, and drawn with their cautions", async () => {
    const { measurer } = await hookedUp("Bend a lead and watch");
    expect(measurer.calls).toContainEqual({
      asked: "use",
      route: { device: { id: "rack", name: "Rack outputs" }, first: 0 },
    });
    expect(body()).toContain("Out of Rack outputs, back into Rack interface.");
    expect(body()).toContain("Headphones off and laid down");
    await tab.getByLabelText("a load box stands").click();
    await expect.element(tab.getByRole("img", { name: /into a load box/ })).toBeVisible();
    await clean("plugged in");
    await press("back");
    await press("Measure with a sound card");
    await press(/^here:/);
    await expect.poll(body).toContain("back into Rack interface.");
  });

  test("what befalls it is said, and it starts anew", async () => {
    const { measurer } = await hookedUp("Bend a lead and watch");
    await press("Start quietly");
    measurer.end({ ended: "found", found: "clipped", level: -70 });
    await expect.poll(body).toContain("Even the softest is too much for this input");
    await press("Start quietly");
    measurer.fail("busy");
    await expect.poll(body).toContain("Another program holds the input");
    await press("Start quietly");
    await expect.poll(body).not.toContain("Another program");
    await press("Stop");
    await expect.element(button("Start quietly")).toBeVisible();
  });

  test("by hand it begins at once, says what is missing, and learns anew at another level", async () => {
    const { measurer } = await hookedUp("Bend a lead and watch");
    await press("I raise it by hand");
    await expect.element(heading()).toHaveTextContent("Hold it still");
    measurer.open({ ...lineIn, processed: ["noiseSuppression"] });
    const nothing = [new Float32Array(96_000), new Float32Array(96_000)];
    hear(measurer, nothing);
    await expect.poll(body).toContain("Nothing of the signal comes back");
    expect(body()).toContain("takes noise away on this input although it was asked not to");
    await clean("nothing comes back");
    await press("louder");
    hear(measurer, nothing, { from: 1, offset: 3 });
    hear(measurer, still, { offset: 5 });
    await expect.element(heading()).toHaveTextContent("Bend it");
  });
});

describe("while it watches", () => {
  test("events are told as they come, and where by the marks of the hand", async () => {
    const opened = await hookedUp("Bend a lead and watch");
    const { measurer } = opened;
    await watching(opened, bending);
    await expect.poll(body).toContain("Nothing has let go so far.");
    await keys(" ");
    hear(measurer, bending, { from: 1.5, to: 3.2 });
    await expect.poll(body).toContain("Left gone for 12 ms, at the tip's wire (1 event).");
    hear(measurer, bending, { from: 3.2 });
    await expect.poll(body).toContain("Right gone for 300 ms, at the ring's wire (2 events).");
    const spaceFor = (plug: number) =>
      expect
        .element(button(`hand at plug ${plug}`))
        .toHaveAttribute("aria-keyshortcuts", `Space ${plug}`);
    await spaceFor(2);
    await press("hand at plug 2");
    await spaceFor(1);
    await clean("watching");
    await press("Stop");
    await expect
      .element(heading())
      .toHaveTextContent("2 events in 4.2 s, the worst: right gone for 300 ms, at the ring's wire");
    const rows = [...document.querySelectorAll(".events li")].map((row) => row.textContent);
    expect(rows).toEqual([
      expect.stringMatching(/^Right gone for 300 ms.* At 0:03, about 7 tenths of the way/),
      expect.stringMatching(/^Left gone for 12 ms.* At 0:02, about 4 tenths of the way/),
    ]);
    expect(body()).toContain("The sleeve: not tested.");
    await clean("result");
    await press("Watch again");
    await expect.element(button("Start quietly")).toBeVisible();
  });

  test("is stopped by Esc, and by whatever goes; what was seen is kept", async () => {
    const opened = await hookedUp("Bend a lead and watch");
    await watching(opened);
    await keys("{Escape}");
    await expect.element(heading()).toHaveTextContent("Nothing let go in 1.5 s");
    expect(opened.measurer.world().doing).toBe("nothing");
    await press("Watch again");
    await watching(opened);
    opened.measurer.fail("gone");
    await expect.poll(body).toContain("What was seen until then stands below.");
    await expect.element(heading()).toHaveTextContent("Nothing let go");
  });

  test("a tick is heard only where it does not go into the lead, and only when asked for", async () => {
    const opened = await hookedUp("Bend a lead and watch");
    const { measurer, player } = opened;
    const ticks = () => player.calls.filter((call) => call.asked === "play").length;
    await watching(opened, bending);
    hear(measurer, bending, { from: 1.5, to: 3.2 });
    await expect.poll(body).toContain("(1 event)");
    expect(ticks()).toBe(0);
    await tab.getByLabelText("a tick at each event").click();
    hear(measurer, bending, { from: 3.2 });
    await expect.poll(body).toContain("(2 events)");
    expect(ticks()).toBe(1);
    measurer.change({ route: { first: 0 } });
    await expect.element(tab.getByLabelText("a tick at each event")).toBeDisabled();
    expect(body()).toContain("it would come out of the output that feeds the lead");
  });

  test("the strip shows both lanes whole, and a break where it was, with colour and without", async () => {
    const opened = await hookedUp("Bend a lead and watch");
    await watching(opened, bending);
    hear(opened.measurer, bending, { from: 1.5 });
    await expect.poll(body).toContain("(2 events)");
    // The sheet stands still for 12 s; a time on it, and the colour of the left lane's middle there.
    const at = (time: number) => {
      const canvas = document.querySelector("canvas");
      if (!canvas) throw new Error("there is no strip");
      const [x, y] = [(time / 12) * canvas.width, 0.27 * canvas.height];
      return canvas.getContext("2d")?.getImageData(x, y, 1, 1).data.join();
    };
    await expect.poll(() => at(2.0)).toBe("243,236,216,255");
    expect(at(2.506)).toBe("242,193,78,255");
    expect(at(3.6)).toBe("243,236,216,255");
    await tab.getByLabelText("colour").click();
    await expect.poll(() => at(2.506)).toBe("58,67,74,255");
  });
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each(["wide", "narrow"] as const)("every state is accessible, %s", async (size) => {
    await seenAs(size, scheme);
    const opened = await hookedUp("Bend a lead and watch");
    await clean("plugged in");
    await watching(opened, bending);
    hear(opened.measurer, bending, { from: 1.5 });
    await expect.poll(body).toContain("(2 events)");
    await clean("watching");
    await press("Stop");
    await clean("result");
  });
});
