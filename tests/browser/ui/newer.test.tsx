import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { hookedUp } from "../support/hooked-up.ts";
import { button, heading, open, press } from "../support/open.tsx";

afterEach(cleanup);

const offer = "Begin anew with it";
const offered = () => document.body.textContent?.includes(offer);

test("a newer version is told quietly, never while it sounds, and taken when asked", async () => {
  const { copy, player } = open();
  expect(document.querySelector("[role='status']")).toBeNull();
  copy.change({ kept: true, newer: true });
  await expect.element(tab.getByRole("status")).toHaveTextContent("A newer version is here.");
  player.change({ playing: true });
  await expect.poll(() => document.querySelector("[role='status']")).toBeNull();
  player.change({ playing: false });
  await press(offer);
  expect(copy.asked).toEqual(["newer"]);
  expect(player.calls.at(-1)).toEqual({ asked: "silence" });
});

test("a newer version is not offered while an answer is not on the disk", async () => {
  const { copy, shelf } = open();
  copy.change({ kept: true, newer: true });
  await press("One person");
  await expect.element(tab.getByRole("status")).toHaveTextContent("A newer version is here.");
  await press(/^1 you/);
  shelf.refuse("full");
  await press("Play");
  await press("middle");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("a reload would lose");
  expect(offered()).toBe(false);
  shelf.refuse(undefined);
  await press("Play");
  await press("middle");
  await expect.element(button(offer)).toBeVisible();
});

test("a newer version is not offered in a training round, which the page would lose", async () => {
  const { copy } = open({ seeds: [7] });
  copy.change({ kept: true, newer: true });
  await expect.element(button(offer)).toBeVisible();
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  expect(offered()).toBe(false);
  await press("back");
  await expect.element(button(offer)).toBeVisible();
});

test("a newer version is not offered while something is measured, and again once that is over", async () => {
  const { copy, measurer } = await hookedUp("Measure with a sound card");
  copy.change({ kept: true, newer: true });
  await expect.element(button(offer)).toBeVisible();
  await press(/^as it comes/);
  await press("Measure it");
  expect(measurer.world().doing).toBe("finding the level");
  await expect.poll(offered).toBe(false);
  measurer.end({ ended: "found", found: "loud enough", level: -50 });
  await expect.element(heading()).toHaveTextContent("Measuring");
  expect(offered()).toBe(false);
  await press("Stop");
  await expect.element(button(offer)).toBeVisible();
});

test("a newer version is not offered while a lead is watched", async () => {
  const { copy, recorder, measurer } = await hookedUp("Bend a lead and watch");
  copy.change({ kept: true, newer: true });
  await expect.element(button(offer)).toBeVisible();
  await press("I raise it by hand");
  await expect.poll(() => measurer.world().doing).not.toBe("nothing");
  await expect.poll(offered).toBe(false);
  expect(recorder.world().trouble).toBeUndefined();
  await press("Stop");
  await expect.element(button(offer)).toBeVisible();
});
