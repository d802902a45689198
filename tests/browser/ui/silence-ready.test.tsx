import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { button, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const begun = (player: ReturnType<typeof open>["player"]) =>
  player.calls.filter(({ asked }) => asked === "audition").length;

test.each([
  ["Esc", () => keys("{Escape}")],
  ["the button", async () => document.querySelector<HTMLElement>(".silence")?.click()],
])("%s silences what is only being made ready", async (_, silence) => {
  const { player } = open();
  await press("Hear what faults sound like");
  await expect.element(button(/this rig, healthy/)).toBeVisible();
  document.querySelector<HTMLElement>(".version.faulty")?.click();
  await silence();
  await new Promise((resolve) => setTimeout(resolve, 4000));
  expect(begun(player)).toBe(0);
  expect(document.querySelector(".making")).toBeNull();
  await keys("f");
  await expect.poll(() => begun(player), { timeout: 8000 }).toBe(1);
});
