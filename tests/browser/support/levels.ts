import { expect } from "vitest";
import { page as tab } from "vitest/browser";
import type { Rig } from "#core/rig/rig.ts";
import { add, type Log } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { heading, open, press } from "./open.tsx";

/** Goes on with a session of a rig, as it was left, and to how loud it is at its first position. */
export async function openLevels(rig: Rig, log: Log = add([], { entry: "drawing", rig }, 0)) {
  const texts = { "leftwright.log": JSON.stringify(log) };
  const opened = open({ storage: createMemoryStorage({ texts }) });
  await press("Go on with the last session");
  await press("How loud, how much hiss");
  await expect.poll(() => document.querySelector(".level-diagram")).not.toBeNull();
  await expect.element(heading()).toHaveFocus();
  // What still moves takes the mouse's press for itself.
  await Promise.all(document.getAnimations().map((one) => one.finished));
  return opened;
}

/** The knob of a box, by its name. */
export const knob = (part: string) =>
  tab.getByRole("slider", { name: `knob of ${part}`, exact: true });
/** What a number is typed in. */
export const field = (name: string) => tab.getByLabelText(name, { exact: true });
