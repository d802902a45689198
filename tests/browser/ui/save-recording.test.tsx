import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import wavefile from "wavefile";
import { hookedUp } from "#tests/browser/support/hooked-up.ts";
import { heading, press } from "#tests/browser/support/open.tsx";
import { measuredThrough } from "#tests/browser/support/returned.ts";

afterEach(cleanup);

test("what was recorded is a file when it is asked for, sample for sample, of a result and of a refusal", async () => {
  const { measurer } = await hookedUp("Measure with a sound card");
  await press(/^as it comes/);
  await press("Measure it");
  measurer.end({ ended: "found", found: "loud enough", level: -50 });
  await expect.element(heading()).toHaveTextContent("Measuring");
  const ended = measuredThrough([1, 0, 0, 0.5]);
  measurer.end(ended);
  await expect.element(heading()).toHaveTextContent("The right side is weaker");
  await press("keep this recording");
  const link = tab.getByRole("link", { name: /^Save the recording, \d+ MB$/ });
  await expect.element(link).toHaveAttribute("download", "measured.wav");
  const kept = await fetch(link.element().getAttribute("href") ?? "");
  const file = new wavefile.WaveFile(new Uint8Array(await kept.arrayBuffer()));
  if (ended.ended !== "measured") throw new Error("nothing was measured");
  const [left, right] = file.getSamples(false, Float32Array) as unknown as Float32Array[];
  expect(left).toEqual(ended.capture.channels[0]);
  expect(right).toEqual(ended.capture.channels[1]);

  await press("Measure the next one");
  await expect.element(heading()).toHaveTextContent("Measuring");
  const silent = ended.capture.channels.map((channel) => new Float32Array(channel.length));
  measurer.end({ ...ended, capture: { ...ended.capture, channels: silent } });
  await expect.element(heading()).toHaveTextContent("It cannot be judged so");
  await expect.element(tab.getByRole("button", { name: "keep this recording" })).toBeVisible();
});
