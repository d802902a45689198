import type { Page } from "playwright";
import { type Recording, whereWas } from "./ears.ts";
import { press, say } from "./press.ts";
import { hearNow, normalOf } from "./tap.ts";

/** Pushed more often than this it is nowhere to be brought to the middle. */
const most = 8;
/** Nearer to the middle than this nobody pushes any more, decibels. */
const near = 0.7;

/** Starts a noise that goes on, pushes it with the arrow keys until it is in the middle of the head, and says so, or that it never is. */
export async function pushToTheMiddle(
  page: Page,
  spoilt: (recording: Recording) => Recording,
): Promise<void> {
  await press(page, "Play");
  const slide = page.getByRole("slider");
  await page.getByRole("button", { name: "It is in the middle" }).waitFor();
  let heard = spoilt(await hearNow(page));
  for (let pushes = 0; pushes < most && Math.abs(leadOf(heard)) > near; pushes++) {
    const lead = leadOf(heard);
    const steps = Math.min(12, Math.max(1, Math.round(Math.abs(lead))));
    for (let at = 0; at < steps; at++) await slide.press(lead > 0 ? "ArrowRight" : "ArrowLeft");
    heard = spoilt(await hearNow(page));
  }
  const { place } = whereWas(heard, await normalOf(page));
  await say(page, place === "middle" ? "It is in the middle" : "never in the middle");
}

/** By how many decibels the left ear has more. */
function leadOf({ left, right }: Recording): number {
  const power = (samples: Float32Array) => samples.reduce((sum, x) => sum + x * x, 1e-12);
  return 10 * Math.log10(power(left) / power(right));
}
