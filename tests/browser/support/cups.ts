import { expect } from "vitest";
import { measureReturn } from "#core/measurement/measured.ts";
import type { Judging } from "#worker/judging.ts";
import { button, heading, open, press } from "./open.tsx";
import { measuredAt, measuredThrough } from "./returned.ts";

export type Opened = ReturnType<typeof open>;
type Cup = Parameters<typeof measuredAt>[0];

export const named = [{ id: "mic", name: "Built-in microphone" }];

const judged = new WeakMap<Float32Array, ReturnType<typeof measureReturn>>();

/** What the worker does, without a worker to be loaded each time; the same capture once. */
export const judging: Judging = async (capture) => {
  const [samples = new Float32Array()] = capture.channels;
  const result = judged.get(samples) ?? measureReturn(capture);
  judged.set(samples, result);
  return result;
};

const captures = new Map<string, ReturnType<typeof measuredAt>>();

/** A cup as it is measured; the same cup is the same capture. */
export function atMicrophone(cup: Cup): ReturnType<typeof measuredAt> {
  const result = captures.get(`${cup}`) ?? measuredAt(cup);
  captures.set(`${cup}`, result);
  return result;
}

/** From where the ends are chosen to the first cup. */
export async function chosen() {
  await expect.element(heading()).toHaveTextContent("Out of which, and which microphone?");
  await press("Built-in microphone");
  await press("Go on");
  await expect.element(heading()).toHaveTextContent("Hold the left cup to the microphone");
}

export async function atCups(how: Parameters<typeof open>[0] = { judging }): Promise<Opened> {
  const opened = open(how);
  opened.recorder.offer(named);
  await press("Measure with a sound card");
  await press(/^headphones: each cup/);
  await expect.poll(() => document.body.textContent).toContain("may turn a wireless headset mono");
  await press("They are wired: go on");
  await chosen();
  return opened;
}

/** From the question of a position with real gear. */
export async function atSeat(): Promise<Opened> {
  const opened = open({ judging });
  opened.recorder.offer(named);
  await press("One person");
  await press(/^1 /);
  await press("Let the microphone listen");
  await press("They are wired: go on");
  await chosen();
  return opened;
}

/** A press that plays to the microphone, and what comes of it; the level is found on the way where it is not known. */
export async function heard({ measurer }: Opened, start: string, cup: Cup): Promise<void> {
  await press(start);
  if (measurer.world().doing === "finding the level")
    measurer.end({ ended: "found", found: "loud enough", level: -50 });
  await expect.element(heading()).toHaveTextContent("Listening");
  measurer.reach(3, 11);
  await expect.poll(() => document.body.textContent).toContain("8 s left");
  measurer.end(atMicrophone(cup));
}

export async function both(opened: Opened, left: Cup, right: Cup): Promise<void> {
  await heard(opened, "Listen to the left cup", left);
  await expect.element(heading()).toHaveTextContent("Now hold the right cup");
  await heard(opened, "Listen to the right cup", right);
  await expect.element(button("Listen to both again")).toBeVisible();
}

/** A cup that is too loud for the microphone. */
export function clipped() {
  const whole = measuredThrough([0, 1, 0, 1]);
  if (whole.ended !== "measured") return whole;
  const channels = whole.capture.channels.map((samples) => {
    const top = 0.5 * samples.reduce((most, x) => Math.max(most, x), 0);
    return samples.map((x) => Math.max(-top, Math.min(top, x)));
  });
  return { ...whole, capture: { ...whole.capture, channels } };
}
