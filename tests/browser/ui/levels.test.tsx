import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page as tab, userEvent } from "vitest/browser";
import { hissParts } from "#core/hearing/hiss.ts";
import { adviceFor } from "#core/level/advice.ts";
import { feedTo, usualProgramme } from "#core/level/stages.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { example } from "#core/rig/rigs.ts";
import { add } from "#core/session/log.ts";
import { toDecibels } from "#core/units/decibels.ts";
import { field, knob, openLevels } from "../support/levels.ts";
import { button, heading, keys, open, openBench, press } from "../support/open.tsx";
import { drawnIn, startOf } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => tab.viewport(1280, 800));

const setting = (rig: Rig, part: string, name: string) =>
  rig.parts.find(({ id }) => id === part)?.settings?.[name];

test("a knob dragged is entered once it is let go, and what is said follows; undone it stands as before", async () => {
  const { log } = await openLevels(example);
  const before = heading().element().textContent;
  knob("the amplifier").element().scrollIntoView({ block: "center" });
  await userEvent.dragAndDrop(knob("the amplifier"), button("numbers of the amplifier"));
  await expect.poll(() => log().length).toBe(2);
  const up = Number(setting(drawnIn(log()), "amplifier", "output 1: knob"));
  expect(up).toBeGreaterThan(0.6);
  expect(knob("the amplifier").element()).toHaveAttribute(
    "aria-valuenow",
    String(Math.round(100 * up) / 10),
  );
  expect(heading().element().textContent).not.toBe(before);
  await press("undo");
  await expect.element(heading()).toHaveTextContent(before ?? "");
  expect(setting(drawnIn(log()), "amplifier", "output 1: knob")).toBeUndefined();
});

test("while it is dragged only the picture follows", async () => {
  const { log } = await openLevels(example);
  const line = () => document.querySelector(".level-plot .programme")?.getAttribute("d");
  const before = line();
  const dial = knob("the laptop").element();
  dial.setPointerCapture = () => {};
  const at = (type: string, clientY: number) =>
    dial.dispatchEvent(
      new PointerEvent(type, { pointerId: 7, bubbles: true, button: 0, clientX: 0, clientY }),
    );
  at("pointerdown", 300);
  at("pointermove", 260);
  await expect.poll(line).not.toBe(before);
  at("pointercancel", 260);
  await expect.poll(line).toBe(before);
  expect(log()).toHaveLength(1);
});

test("arrow keys turn it, and a run of them is one entry", async () => {
  const { log } = await openLevels(example);
  knob("the mixer").element().focus();
  await keys("{ArrowUp}{ArrowUp}{ArrowRight}{PageUp}{ArrowDown}");
  await expect
    .element(knob("the mixer"))
    .toHaveAttribute("aria-valuetext", expect.stringMatching(/^6\.4 of 10, −\d+ dB; \d+ dB/));
  await keys("{Tab}");
  await expect.poll(() => log().length).toBe(2);
  expect(setting(drawnIn(log()), "mixer", "phones: knob")).toBeCloseTo(0.64, 6);
});

test("the advice sets every knob by one entry, for how loud it should be", async () => {
  const { log } = await openLevels(example);
  await press("quiet talk, 70 dB");
  await press("Set the knobs so");
  await expect.element(heading()).toHaveTextContent("Comfortable: 70 dB at the ear");
  expect(log()).toHaveLength(2);
  const feed = feedTo(build(example), "position 1");
  const due = feed && adviceFor(feed, usualProgramme, 70).knobs;
  const now = feedTo(build(drawnIn(log())), "position 1");
  expect(now?.stages.map(({ knob: up }) => up)).toEqual(
    due?.map((up) => expect.closeTo(up ?? 0, 3)),
  );
  await expect.element(button("The knobs stand so")).toBeVisible();
  await press("The knobs stand so");
  expect(log()).toHaveLength(2);
});

test("what cannot be a number is told and stays; a power is taken as volts; a unit that is not said is doubted", async () => {
  const { log } = await openLevels(example);
  await press("numbers of the amplifier");
  await field("the most it gives").fill("plenty");
  await keys("{Enter}");
  await expect.element(tab.getByText(/'plenty' is no number/)).toBeVisible();
  await expect.element(field("the most it gives")).toHaveValue("plenty");
  await field("the most it gives").fill("900 V");
  await keys("{Enter}");
  await expect.element(tab.getByText(/900 V cannot be/)).toBeVisible();
  expect(log()).toHaveLength(1);
  await field("the most it gives").fill("80 mW in 32 Ω");
  await expect.element(tab.getByText("That is 1.6 V.")).toBeVisible();
  await keys("{Enter}");
  await expect.poll(() => setting(drawnIn(log()), "amplifier", "most volts")).toBeCloseTo(1.6, 9);
  await press("numbers of headphones 1");
  await field("sensitivity").fill("100");
  await keys("{Enter}");
  await expect.element(tab.getByText(/does not say of what.* 15 dB less/)).toBeVisible();
  await press("of a volt");
  await expect.poll(() => setting(drawnIn(log()), "headphones 1", "sensitivity in")).toBe("dB/V");
  await field("sensitivity").fill("");
  await keys("{Enter}");
  await expect.poll(() => setting(drawnIn(log()), "headphones 1", "sensitivity")).toBeUndefined();
});

test("the hiss is played as far below the programme as it is said to be; afterwards the volume must come down", async () => {
  const { player } = await openLevels(example);
  await tab.getByText("Hear the hiss").click();
  const [, said] = /alone, (\d+) dB lower/.exec(document.body.textContent ?? "") ?? [];
  await press("Programme, then hiss");
  await expect.poll(() => player.calls.at(-1)?.asked).toBe("audition");
  const call = player.calls.at(-1);
  if (call?.asked !== "audition") throw new Error("nothing was played");
  expect(call.how).toEqual({ turnedUp: true });
  const { sound, turned } = call.audition.healthy;
  expect(turned).toEqual([1, 1]);
  const level = (from: number, to: number) => {
    const part = sound.left.subarray(from * sound.rate, to * sound.rate);
    return toDecibels(Math.sqrt(part.reduce((sum, x) => sum + x * x, 0) / part.length));
  };
  const { programme, between, hiss } = hissParts;
  const start = programme + between;
  const below = level(0.1, programme - 0.1) - level(start + 0.1, start + hiss - 0.1);
  expect(Math.abs(below - Number(said))).toBeLessThan(0.5);
});

test("hiss too far below is not played, and why is said", async () => {
  const most = { "output noise": 0.01, "input noise": 0.01, "most input volts": 100 };
  const rig = {
    ...startOf("one person"),
    parts: startOf("one person").parts.map((part) => ({
      ...part,
      settings: {
        ...part.settings,
        ...Object.fromEntries(Object.entries(most).map(([name, one]) => [`phones: ${name}`, one])),
        "phones: knob": 1,
      },
    })),
  };
  const { player } = await openLevels(rig);
  await tab.getByText("Hear the hiss").click();
  await expect.element(tab.getByText(/too soft to be played here/)).toBeVisible();
  expect(document.querySelector(".level-hiss .play")).toBeNull();
  expect(player.calls.map(({ asked }) => asked)).not.toContain("audition");
});

test("one more listener is drawn at a press, and the test signals of the session are counted", async () => {
  const { log } = await openLevels(example);
  await tab.getByText(/^How long may it last/).click();
  await expect.element(tab.getByText(/No test signal was answered/)).toBeVisible();
  await tab.getByText("One more wants to listen").click();
  await press("draw it so");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(example.positions.length + 1);
});

test("a rig to try has no way there: it would give its fault away", async () => {
  open();
  await openBench(7);
  await expect.element(button(/^Listen at/)).toBeVisible();
  expect(tab.getByText("How loud, how much hiss").elements()).toEqual([]);
});

test("what was noticed of the hiss goes into it", async () => {
  const trial = { try: "knob down", part: "amplifier", socket: "output 1" } as const;
  const asked = { check: "noise", position: "position 1", noise: "hiss", trial } as const;
  const log = add(
    add([], { entry: "drawing", rig: example }, 1),
    {
      entry: "finding",
      finding: { asked, results: [["gone"]] },
    },
    2,
  );
  await openLevels(example, log);
  await expect.element(tab.getByText(/what you noticed of it, too: 1 answer\./)).toBeVisible();
});
