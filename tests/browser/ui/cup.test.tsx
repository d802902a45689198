import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { holding } from "#core/session/log.ts";
import { clean } from "#tests/browser/support/clean.ts";
import {
  atCups,
  atMicrophone,
  atSeat,
  both,
  chosen,
  clipped,
  heard,
  judging,
  named,
  type Opened,
} from "#tests/browser/support/cups.ts";
import { seenAs } from "#tests/browser/support/hooked-up.ts";
import { button, heading, keys, open, press } from "#tests/browser/support/open.tsx";
import { lineIn, measuredAt } from "#tests/browser/support/returned.ts";

beforeEach(() => seenAs("wide", "dark"));
afterEach(cleanup);

const body = () => document.body.textContent ?? "";
const picture = () => document.querySelector("svg[role=img]")?.getAttribute("aria-label") ?? "";
const searches = ({ measurer }: Opened) =>
  measurer.calls.filter(({ asked }) => asked === "findLevel").length;

const entered = ({ log }: Opened) =>
  holding(log()).flatMap((entry) =>
    entry.entry === "finding" && "results" in entry.finding
      ? [[entry.finding.asked.check, ...entry.finding.results.flat()]]
      : [],
  );

describe("two cups", () => {
  test("healthy, one softer, which rattles: at one level, and only shown", async () => {
    const opened = await atCups({}); // by the worker itself
    await both(opened, [1, 0], [0, 0.4, 40]);
    expect(heading().element().textContent).toBe("Each side is in its own cup, both the same way");
    expect(picture()).toContain("The left cup gives the left. The right cup gives the right.");
    expect(picture()).toMatch(/The right cup is (7\.\d|8\.\d) dB softer/);
    expect(picture()).toContain("only whether both are alike");
    expect(picture()).toMatch(/The right cup buzzes or rattles\. Distortion: under 0\.\d+ % in/);
    expect(document.querySelector("main")?.textContent).not.toContain("Enter what it heard");
    expect(searches(opened)).toBe(1);
    expect(opened.measurer.calls.find(({ asked }) => asked === "findLevel")).toMatchObject({
      how: { input: { name: "Built-in microphone" } },
    });
    await clean("healthy");
  });

  test("opposite polarity is said, and which of them is wrong is not", async () => {
    await both(await atCups(), [1, 0], [0, -1]);
    expect(heading().element().textContent).toContain("one of them upside down");
    expect(picture()).toContain("They push opposite ways. A microphone's own polarity is unknown");
  });

  test("a dead one gives no level: the other one's is found from the start", async () => {
    const opened = await atCups();
    await both(opened, [0, 0], [0, 1]);
    expect(heading().element().textContent).toBe("The left cup gives nothing");
    expect(picture()).not.toContain("softer");
    expect(searches(opened)).toBe(2);
    const asked = opened.measurer.calls.map((call) => call.asked);
    expect(asked.filter((one) => /use|find|measure/.test(one))).toEqual([
      ...["use", "findLevel", "measure"],
      ...["use", "findLevel", "measure"],
    ]);
  });

  test("is refused with what to do, and can be stopped; too loud beside the other finds another level", async () => {
    const opened = await atCups();
    const { measurer } = opened;
    await press("Listen to the left cup");
    await expect.element(heading()).toHaveTextContent("Finding the level");
    await keys("{Escape}");
    await expect.element(heading()).toHaveTextContent("Hold the left cup");
    expect(measurer.world().doing).toBe("nothing");
    await press("Listen to the left cup");
    measurer.fail("not allowed");
    await expect.poll(body).toContain("The input was not allowed");
    await press("Listen to the left cup");
    measurer.end({ ended: "found", found: "loud enough", level: -50 });
    await expect.element(heading()).toHaveTextContent("Listening");
    measurer.end(measuredAt([1, 0], { ...lineIn, processed: ["autoGainControl"] }));
    await expect.poll(body).toContain("moves the level by itself");
    await clean("refused");
    await press("back to the cup");
    await heard(opened, "Listen to the left cup", [1, 0]);
    await expect.element(heading()).toHaveTextContent("Now hold the right cup");
    await press("Listen to the right cup");
    await expect.element(heading()).toHaveTextContent("Listening");
    measurer.end(clipped());
    await expect.poll(body).toContain("Tops are cut off flat");
    await press("Find the level at this cup");
    await expect.element(heading()).toHaveTextContent("Finding the level: the right cup");
    measurer.end({ ended: "found", found: "loud enough", level: -50 });
    await expect.element(heading()).toHaveTextContent("Listening");
    measurer.end(atMicrophone([0, 1]));
    await expect.element(heading()).toHaveTextContent("Now hold the left cup");
  });
});

describe("within a session", () => {
  test("swapped cups: what was heard is entered as three answers, and it goes on from there", async () => {
    const opened = await atSeat();
    await both(opened, [0, 1], [1, 0]);
    expect(heading().element().textContent).toBe("The sides are exchanged");
    await press("Enter what it heard");
    await expect.poll(() => entered(opened)).toHaveLength(3);
    expect(entered(opened)).toEqual([
      ["left", "right ear"],
      ["right", "left ear"],
      ["pair", "middle", "all round"],
    ]);
    await expect.poll(() => document.querySelector(".cups-heard")).toBeNull();
    await expect.element(button("take the last answer back")).toBeVisible();
  });

  test("where neither is heard nothing can be entered, and it goes back to the question", async () => {
    const opened = await atSeat();
    await both(opened, [0, 0], [0, 0]);
    expect(heading().element().textContent).toBe("Neither cup is heard");
    expect(body()).toContain("proves nothing");
    expect(body()).not.toContain("Enter what it heard");
    await press("back to the question");
    await expect.element(button("Play")).toBeVisible();
    expect(entered(opened)).toEqual([]);
  });

  test("not on a simulated rig, which has no cups", async () => {
    open();
    await press("A rig to try without gear");
    await press(/^1 /);
    await expect.element(button("Play")).toBeVisible();
    expect(body()).not.toContain("Let the microphone listen");
  });
});

test("with the keyboard alone", async () => {
  const opened = open();
  const { recorder, measurer } = opened;
  recorder.offer(named);
  const enter = async (name: string | RegExp) => {
    await expect.element(button(name)).toBeVisible();
    button(name).element().focus();
    await keys("{Enter}");
  };
  await enter("Measure with a sound card");
  await expect.element(heading()).toHaveFocus();
  await keys("{Tab}{ArrowRight}{Enter}");
  await expect.element(heading()).toHaveTextContent("Each cup in turn");
  await expect.element(heading()).toHaveFocus();
  await keys("{Tab}{Enter}");
  await expect.element(heading()).toHaveTextContent("Out of which");
  await expect.element(heading()).toHaveFocus();
  await enter("Go on");
  await expect.element(heading()).toHaveTextContent("Hold the left cup");
  await expect.element(heading()).toHaveFocus();
  await keys("{Tab}{Tab}{Enter}");
  await expect.element(heading()).toHaveTextContent("Finding the level");
  measurer.end({ ended: "found", found: "loud enough", level: -50 });
  await expect.element(heading()).toHaveTextContent("Listening");
  await expect.element(heading()).toHaveFocus();
  await keys("{Tab}{Enter}");
  await expect.element(heading()).toHaveTextContent("Hold the left cup");
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each(["wide", "narrow"] as const)("every state is accessible, %s", async (size) => {
    await seenAs(size, scheme);
    const opened = open({ judging });
    opened.recorder.offer(named);
    await press("Measure with a sound card");
    await clean("where");
    await press(/^headphones: each cup/);
    await clean("first");
    await press("They are wired: go on");
    await clean("ends");
    await chosen();
    await clean("hold");
    await press("Listen to the left cup");
    await clean("level");
    await press("Stop");
    await both(opened, [0.5, -0.5], [0, 0]);
    expect(picture()).toContain("The left cup gives left minus right. The right cup gives nothing");
    await clean("result");
  });
});
