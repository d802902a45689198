import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab, userEvent } from "vitest/browser";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";
import { wav } from "../support/wav.ts";

afterEach(cleanup);

const last = (player: ReturnType<typeof open>["player"]) => player.calls.at(-1);
const asked = (player: ReturnType<typeof open>["player"], what: string) =>
  player.calls.filter((call) => call.asked === what);

test("a fault is pointed at, heard, and the healthy one beside it", async () => {
  const { player } = open();
  await press("Hear what faults sound like");
  await expect.element(heading()).toHaveTextContent("Hear what faults sound like");
  await press("headphones 1");
  await press(/The return is lost/);
  expect(document.querySelector(".fault-said")?.textContent).toContain(
    "return is lost in headphones 1",
  );
  await press(/^faulty/);
  await expect.poll(() => asked(player, "audition"), { timeout: 8000 }).toHaveLength(1);
  expect(last(player)).toMatchObject({ how: { loop: true, first: "faulty" } });
  await expect.element(button(/faulty you hear this/)).toBeVisible();
  await keys("h");
  expect(last(player)).toEqual({ asked: "hear", version: "healthy" });
  await keys("{Escape}");
  expect(last(player)).toEqual({ asked: "silence" });
});

test("a sound of one's own is taken, and junk refused in words", async () => {
  const { player } = open();
  await press("Hear what faults sound like");
  const input = tab.getByLabelText("a sound of your own");
  await userEvent.upload(input, new File(["no sound at all"], "notes.mp3", { type: "audio/mpeg" }));
  await expect
    .poll(() => document.querySelector("[role='alert']")?.textContent)
    .toContain("no sound in that file");
  await userEvent.upload(input, wav("a tune.wav"));
  await expect.poll(() => document.querySelector(".file.chosen")?.textContent).toBe("a tune.wav");
  expect(document.querySelector("[role='alert']")).toBeNull();
  await press(/this rig, healthy/);
  await expect.poll(() => asked(player, "audition"), { timeout: 8000 }).toHaveLength(1);
});

test("what was planned is heard, and the way back leads to the plan", async () => {
  open();
  await press("Will it work, and which lead?");
  await press(/Hear it/);
  await expect.element(heading()).toHaveTextContent("Hear it before you plug in");
  await press("back");
  await expect.element(heading()).toHaveTextContent("Before you plug in");
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    [1280, 800],
    [390, 844],
  ] as const)("both screens are accessible at %i by %i", async (width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    open({ seeds: [7] });
    await press("Hear what faults sound like");
    await press("headphones 1");
    await clean("listen");
    await press("back");
    await press("Train your ears: name the fault");
    await expect.element(button(/what is it/)).toBeVisible();
    await keys("1");
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("training");
  });
});
