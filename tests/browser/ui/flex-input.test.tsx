import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { createMeasurer } from "#audio/web-measurer.ts";
import { createRecorder } from "#audio/web-recorder.ts";
import { heading, open, press } from "#tests/browser/support/open.tsx";
import { judging } from "#worker/judging.ts";
import { measuring } from "#worker/measuring.ts";

afterEach(cleanup);

const body = () => document.body.textContent ?? "";

test("with a real input, one that beeps at full scale, that is said, and the input is closed when it is stopped", async () => {
  const recorder = createRecorder();
  const measurer = createMeasurer(recorder);
  open({ instruments: { recorder, measurer, judging, reading: measuring } });
  await press("Bend a lead and watch");
  await expect.element(heading()).toBeVisible();
  if (body().includes("by name?")) await press("Ask for the names");
  await press("Go on");
  await press("I raise it by hand");
  await expect.poll(() => recorder.world().doing, { timeout: 5000 }).toBe("recording");
  await expect.poll(body, { timeout: 8000 }).toContain("The input is cut off at the top");
  await expect.element(heading()).toHaveTextContent("It cannot watch yet");
  await press("Stop");
  await expect.poll(() => recorder.world().doing).toBe("nothing");
  measurer.close();
});
