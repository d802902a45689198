import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab, userEvent } from "vitest/browser";
import { button, keys, open, press } from "../support/open.tsx";
import { wav } from "../support/wav.ts";

afterEach(cleanup);

/** Its name is what it holds. */
const input = () => tab.getByLabelText(/a sound of your own|a tune/);

/** Lengths, in samples, of all that was begun. */
const begun = ({ calls }: ReturnType<typeof open>["player"]) =>
  calls.flatMap((call) =>
    call.asked === "audition" ? [call.audition.healthy.sound.left.length] : [],
  );

async function take(file: File): Promise<void> {
  await userEvent.upload(input(), file);
  await expect.poll(() => document.querySelector(".file.chosen")?.textContent).toBe(file.name);
}

test("after a file was chosen, which keeps the focus, the keys still begin and switch", async () => {
  const { player } = open();
  await press("Hear what faults sound like");
  await take(wav("a tune.wav"));
  (input().element() as HTMLElement).focus();
  await keys("f");
  await expect.poll(() => begun(player), { timeout: 8000 }).toHaveLength(1);
  await keys("h");
  expect(player.calls.at(-1)).toEqual({ asked: "hear", version: "healthy" });
});

test("another file of the same name is another sound", async () => {
  const { player } = open();
  await press("Hear what faults sound like");
  await take(wav("a tune.wav", 1));
  await keys("f");
  await expect.poll(() => begun(player), { timeout: 8000 }).toHaveLength(1);
  await press("knocks and bursts");
  await expect.poll(() => document.querySelector(".file.chosen")).toBeNull();
  await take(wav("a tune.wav", 2));
  await keys("f");
  await expect.poll(() => begun(player), { timeout: 8000 }).toHaveLength(2);
  const [first = 0, second = 0] = begun(player);
  expect(second).toBe(2 * first);
});

test("after the knocks, the same file can be chosen again", async () => {
  open();
  await press("Hear what faults sound like");
  await take(wav("a tune.wav"));
  await press("knocks and bursts");
  await expect.element(button("knocks and bursts")).toHaveAttribute("aria-pressed", "true");
  // A browser tells of a choice only where it differs from what the input still holds.
  await expect.element(input()).toHaveValue("");
});

test("what was refused is said until the knocks are taken instead", async () => {
  open();
  await press("Hear what faults sound like");
  await userEvent.upload(input(), new File(["no sound"], "notes.mp3", { type: "audio/mpeg" }));
  await expect.poll(() => document.querySelector("[role='alert']")).not.toBeNull();
  await press("knocks and bursts");
  await expect.poll(() => document.querySelector("[role='alert']")).toBeNull();
});
