import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { button, keys, press } from "../support/open.tsx";
import { drawnIn, openRig, startOf, thing } from "../support/rig.ts";

afterEach(cleanup);
// A busy machine may take ten times as long; no test waits for this.
vi.setConfig({ testTimeout: 60_000 });
beforeEach(() => tab.viewport(1280, 800));

test("'undo' and 'redo' keep the focus where there is no further step, and do nothing there", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await thing("3 guest, position").click();
  await press("remove");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(3);
  const [undo, redo] = [button("undo"), button("redo")];
  await undo.click();
  await expect.poll(() => drawnIn(log()).positions.length).toBe(4);
  await expect.element(undo).toHaveFocus();
  await expect.element(undo).toHaveAttribute("aria-disabled", "true");
  const entries = log().length;
  await keys("{Enter}");
  await keys("{Tab}");
  await expect.element(redo).toHaveFocus();
  expect(log()).toHaveLength(entries);
  await keys("{Enter}");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(3);
  await expect.element(redo).toHaveAttribute("aria-disabled", "true");
  await expect.element(redo).toHaveFocus();
  await keys(" ");
  await expect.element(undo).toHaveAttribute("aria-disabled", "false");
  expect(drawnIn(log()).positions).toHaveLength(3);
});

test("a copy that draws one output more at a full amplifier says so", async () => {
  const { log } = await openRig(startOf("podcast table"));
  await thing("3 guest, position").click();
  await press("copy it");
  await expect.poll(() => drawnIn(log()).positions.length).toBe(5);
  const said = tab.getByText("The amplifier was full: it now has 5 outputs.");
  await expect.element(said).toBeVisible();
  await expect.element(said).toHaveAttribute("role", "status");
  await press("undo");
  await expect.element(said).not.toBeInTheDocument();
});

test("why a number was not entered goes once something else is refused", async () => {
  await openRig(startOf("podcast table"));
  await thing("amplifier, headphone amplifier").click();
  await press("change");
  const field = tab.getByLabelText("outputs");
  await field.fill("2");
  await keys("{Enter}");
  await expect.element(tab.getByRole("alert")).toHaveTextContent("headphones 3 is in output 3");
  await field.fill("abc");
  await keys("{Enter}");
  await expect.element(tab.getByText("'abc' is not understood")).toBeVisible();
  await expect.element(tab.getByRole("alert")).not.toBeInTheDocument();
  await expect.element(field).toHaveFocus();
});
