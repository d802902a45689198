import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { answer, questionAfter, roundAt } from "#core/training/round.ts";
import type { Answered } from "#core/training/score.ts";
import { clean } from "../support/clean.ts";
import { button, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

/** Making a sound ready is real work: on a busy machine it takes longer than a poll waits by itself. */
const whileMade = { timeout: 10_000 };

test("a round by keys: right and wrong are said, and the score is what the answers add up to", async () => {
  const { player } = open({ seeds: [7] });
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  const round = roundAt(build(fromHeadphoneSocket("one seat", ["you"])), "position 1", 7);
  const answered: Answered[] = [];
  for (const wrong of [false, true, false]) {
    const question = questionAfter(round, answered);
    const at = question.choices.findIndex(({ id }) => (id === question.right) !== wrong);
    const given = question.choices[at]?.id ?? "";
    await keys("f");
    await expect.poll(() => player.calls.at(-1)?.asked, whileMade).toBe("audition");
    await keys(String(at + 1));
    await expect
      .poll(() => document.querySelector("[role='status']")?.textContent)
      .toMatch(wrong ? /^No, it was this:/ : /^Right:/);
    answered.push(answer(question, given));
    await keys("{Enter}");
    await expect.poll(() => document.querySelector("[role='status']")).toBeNull();
  }
  await expect
    .poll(() => document.querySelector(".score summary")?.textContent)
    .toBe("3 heard, 2 named");
});

const status = () => document.querySelector("[role='status']")?.textContent;

/** A first question answered wrongly with a key: the keys of the right choice and of the one that was taken for it. */
async function mistakenOnce() {
  const opened = open({ seeds: [7] });
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  const round = roundAt(build(fromHeadphoneSocket("one seat", ["you"])), "position 1", 7);
  const { choices, right } = questionAfter(round, []);
  const at = choices.findIndex(({ id }) => id === right);
  const [rightKey, wrongKey] = [String(at + 1), String(((at + 1) % choices.length) + 1)];
  await keys("f");
  await expect.poll(() => opened.player.calls.at(-1)?.asked, whileMade).toBe("audition");
  await keys(wrongKey);
  await expect.poll(status).toMatch(/^No, it was this:/);
  return { ...opened, rightKey, wrongKey };
}

const auditions = ({ calls }: ReturnType<typeof open>["player"]) =>
  calls.flatMap((call) => (call.asked === "audition" ? [call] : []));

test("after a wrong answer both are heard again: what it was, and what it was taken for", async () => {
  const { player, rightKey, wrongKey } = await mistakenOnce();
  await keys(wrongKey);
  await expect.poll(() => auditions(player), whileMade).toHaveLength(2);
  const [asked, mistaken] = auditions(player);
  expect(mistaken?.how).toEqual({ loop: true, first: "faulty" });
  expect(mistaken?.audition.faulty).not.toEqual(asked?.audition.faulty);
  expect(mistaken?.audition.healthy).toEqual(asked?.audition.healthy);
  await expect.element(button(/you took it for this: you hear it/), whileMade).toBeVisible();
  expect(document.querySelector(".version[aria-pressed='true']")).toBeNull();
  await keys(rightKey);
  await expect.poll(() => auditions(player), whileMade).toHaveLength(3);
  expect(auditions(player)[2]?.audition).toBe(asked?.audition);
  await expect.element(button(/it was this: you hear it/)).toBeVisible();
  await expect.element(button(/you took it for this: hear it again/)).toBeVisible();
});

test("two presses in a row begin one sound, the later one", async () => {
  const { player, wrongKey } = await mistakenOnce();
  await keys(`${wrongKey}h`);
  await expect.poll(() => auditions(player), whileMade).toHaveLength(2);
  expect(auditions(player)[1]?.how.first).toBe("healthy");
  await new Promise((resolve) => setTimeout(resolve, 500));
  expect(auditions(player)).toHaveLength(2);
  expect(document.querySelector(".version.healthy")?.getAttribute("aria-pressed")).toBe("true");
});

test("what was neither is not played", async () => {
  const { player, rightKey, wrongKey } = await mistakenOnce();
  const before = player.calls.length;
  const other = ["1", "2", "3", "4"].find((key) => key !== rightKey && key !== wrongKey) ?? "";
  await keys(other);
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(player.calls).toHaveLength(before);
});

test("whoever leaves and comes back goes on with the same question and score; leaving silences", async () => {
  const { player } = await mistakenOnce();
  await keys("{Enter}");
  await expect
    .poll(() => document.querySelector(".score summary")?.textContent)
    .toBe("1 heard, 0 named");
  const choices = document.querySelector(".choices")?.textContent;
  await keys("f");
  await expect.poll(() => player.world().playing, whileMade).toBe(true);
  await press("back");
  expect(player.world().playing).toBe(false);
  await press("Hear what faults sound like");
  await press("back");
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  expect(document.querySelector(".choices")?.textContent).toBe(choices);
  expect(document.querySelector(".score summary")?.textContent).toBe("1 heard, 0 named");
});

test("an answer that was given stands after coming back, and one Enter goes on", async () => {
  await mistakenOnce();
  const said = status();
  await press("back");
  await press("Train your ears: name the fault");
  await expect.poll(status).toBe(said);
  await keys("{Enter}");
  await expect.poll(status).toBeUndefined();
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    [1280, 800],
    [390, 844],
  ] as const)("a wrong answer and the score are accessible at %i by %i", async (width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    const { wrongKey } = await mistakenOnce();
    await keys(wrongKey);
    await expect.element(button(/you took it for this: you hear it/), whileMade).toBeVisible();
    await clean("a wrong answer");
    await keys("{Enter}");
    await expect.poll(() => document.querySelector(".score")).not.toBeNull();
    for (const details of document.querySelectorAll("details")) details.open = true;
    await clean("the score");
  });
});

test("where the volume may still be up, nothing is heard until somebody says that it is down", async () => {
  const { player } = open({ seeds: [7] });
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  player.change({ muted: true, turnedUp: true });
  await expect.element(button(/what is it/)).toHaveAttribute("aria-disabled", "true");
  (button(/what is it/).element() as HTMLElement).click();
  await keys("f");
  expect(player.calls.map(({ asked }) => asked)).not.toContain("handOff");
  await press("The volume is back down");
  expect(player.calls.at(-1)).toEqual({ asked: "handOff" });
  expect(document.activeElement?.textContent).toContain("healthy");
  expect(player.calls.map(({ asked }) => asked)).not.toContain("audition");
  await keys("f");
  await expect.poll(() => player.calls.at(-1)?.asked, whileMade).toBe("audition");
});
