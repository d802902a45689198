import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { createFakeMeasurer } from "#audio/fake-measurer.ts";
import { createFakeRecorder } from "#audio/fake-recorder.ts";
import { signalFile } from "#pack/pack.ts";
import { clean } from "#tests/browser/support/clean.ts";
import { seenAs } from "#tests/browser/support/hooked-up.ts";
import { button, heading, open, press } from "#tests/browser/support/open.tsx";
import type { Instruments } from "#ui/screens/use-instruments.ts";
import { judging } from "#worker/judging.ts";

beforeEach(() => seenAs("wide", "dark"));
afterEach(cleanup);

const body = () => document.body.textContent ?? "";

/** A file as somebody would drop it. */
const dropped = (file: File): void => {
  const data = new DataTransfer();
  data.items.add(file);
  const drop = new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true });
  // Beside the button too: the browser would open the file in place of the page.
  document.querySelector("main h1")?.dispatchEvent(drop);
  expect(drop.defaultPrevented).toBe(true);
};

const ours = () => new File([signalFile("multitone", 48_000) as BlobPart], "evening.wav");

test("a recording is read with progress and measured, as it comes", async () => {
  open();
  await press("Measure with a sound card");
  await expect.element(tab.getByText("drop it here")).toBeVisible();
  await clean("where");
  dropped(ours());
  await expect.element(tab.getByRole("progressbar")).toBeVisible();
  await expect.element(heading(), { timeout: 10_000 }).toHaveTextContent("Left in the left ear");
  expect(body()).toContain("evening.wav. The signal is in this recording once.");
  expect(body()).toContain("Left and right are channels 1 and 2 of the file.");
  expect(body()).not.toContain("All round in");
  expect(body()).toContain("unless what played and what recorded had no ground in common");
  await clean("recording");
});

test("a recording is let go when stopped", async () => {
  let stop = () => {};
  const reading: Instruments["reading"] = (_, onShare) => ({
    analysis: new Promise((resolve) => {
      onShare(0.3);
      stop = () => resolve(undefined);
    }),
    stop: () => stop(),
  });
  const [recorder, measurer] = [createFakeRecorder(), createFakeMeasurer()];
  open({ instruments: { recorder, measurer, judging, reading } });
  await press("Measure with a sound card");
  await expect.element(tab.getByText("drop it here")).toBeVisible();
  dropped(new File([], "evening.wav"));
  await expect.poll(body).toContain("30 % of evening.wav");
  await clean("reading");
  await press("Stop");
  await expect.element(button(/^here:/)).toBeVisible();
});

test("what is no recording says why, and another can be chosen", async () => {
  open();
  await press("Measure with a sound card");
  await expect.element(tab.getByText("drop it here")).toBeVisible();
  dropped(new File(["Levels of tonight: all fine."], "levels.wav"));
  await expect.element(heading()).toHaveTextContent("levels.wav cannot be read");
  expect(body()).toContain("This is no WAV");
  await clean("no recording");
  dropped(new File([signalFile("sweep", 48_000) as BlobPart], "sweep.wav"));
  await expect.element(heading(), { timeout: 10_000 }).toHaveTextContent("not in it");
  expect(body()).toContain("The signal is not in this recording");
});
