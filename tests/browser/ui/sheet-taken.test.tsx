import { cleanup } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { page as tab } from "vitest/browser";
import { titleOf } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { evening } from "#tests/support/sessions.ts";
import { button, keys, open, press } from "../support/open.tsx";

/** What was printed: the name and who did it, as they stood on the paper. */
const printed: string[][] = [];
/** What was saved: names of files, and what stands in them. */
const saved: string[] = [];
const made: Blob[] = [];

beforeEach(() => {
  for (const list of [printed, saved, made]) list.length = 0;
  vi.spyOn(window, "print").mockImplementation(() => {
    printed.push([...document.querySelectorAll(".printed")].map((one) => one.textContent ?? ""));
  });
  vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
    made.push(blob as Blob);
    return "blob:none";
  });
  vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (
    this: HTMLAnchorElement,
  ) {
    saved.push(this.download);
  });
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

/** The sheet of an evening on a shelf that can be held. */
async function openSheet() {
  const shelf = createMemoryShelf();
  shelf.lay("evening", evening(6));
  const opened = open({ shelf });
  await press("Go on with the last session");
  await press("the sheet");
  await expect.element(tab.getByRole("article")).toBeVisible();
  return opened;
}

const name = () => tab.getByLabelText("What this session is called");
const who = () => tab.getByLabelText("Who did it");
const element = (of: ReturnType<typeof name>) => of.element() as HTMLInputElement;

/** What a file of rows says the session is called, and who did it. */
function titleIn(rows: string) {
  const cells = rows
    .split("\r\n")
    .find((line) => line.startsWith("session,"))
    ?.split(",");
  return [cells?.[1] ?? "", cells?.[4] ?? ""];
}

/** A tap as an iPhone makes it: it takes the hand off no field. */
const tap = (label: string) => (button(label).element() as HTMLButtonElement).click();

test("it is printed once, and saved as a file of rows that a spreadsheet reads", async () => {
  await openSheet();
  await press("Print or save as PDF");
  await expect.poll(() => printed).toEqual([["Tallow Hall, Saturday soundcheck", ""]]);
  await press("Save as CSV");
  await expect.poll(() => saved).toEqual(["session-2026-11-21.csv"]);
  const bytes = new Uint8Array((await made[0]?.arrayBuffer()) ?? new ArrayBuffer(0));
  expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
  const lines = new TextDecoder().decode(bytes).split("\r\n");
  expect(lines.filter((line) => line.startsWith("position,"))).toHaveLength(6);
  expect(lines).toContain("position,1 host,headphones 1,Healthy,,,-41,,,,,,,,,");
  await press("Print or save as PDF");
  await expect.poll(() => printed).toHaveLength(2);
  expect(saved).toHaveLength(1);
});

describe("right after the name was typed", () => {
  test("a press prints what was typed, once that is on the disk", async () => {
    const { shelf } = await openSheet();
    const answers = shelf.hold();
    await name().fill("Sunday, second house");
    await press("Print or save as PDF");
    expect(printed, "before it is kept").toEqual([]);
    answers();
    await expect.poll(() => printed).toEqual([["Sunday, second house", ""]]);
  });

  test.each([
    ["Print or save as PDF", async () => printed[0] ?? []],
    ["Save as CSV", async () => titleIn((await made[0]?.text()) ?? "")],
  ])("a tap that leaves the hand on the field: %s", async (label, got) => {
    await openSheet();
    await name().fill("Sunday");
    await who().fill("Ines");
    expect(document.activeElement).toBe(element(who()));
    tap(label);
    await expect.poll(got).toEqual(["Sunday", "Ines"]);
    expect(printed.length + made.length).toBe(1);
  });
});

test("who did it is entered though the name is still being written", async () => {
  const { shelf, log } = await openSheet();
  const answers = shelf.hold();
  await name().fill("Sunday");
  await keys("{Enter}");
  await who().fill("Ines");
  await keys("{Enter}");
  answers();
  await expect.poll(() => titleOf(log())).toEqual({ name: "Sunday", who: "Ines" });
  await expect.element(name()).toHaveValue("Sunday");
  await expect.element(who()).toHaveValue("Ines");
});

test("the hand stays on the field after Enter, and what is typed on is not lost", async () => {
  const { shelf, log } = await openSheet();
  const answers = shelf.hold();
  await name().fill("Sunday");
  await keys("{Enter}");
  expect(document.activeElement).toBe(element(name()));
  await keys(" night");
  answers();
  await expect.poll(() => titleOf(log()).name).toBe("Sunday");
  await expect.poll(() => document.querySelector(".printed.title")?.textContent).toBe("Sunday");
  expect(document.activeElement).toBe(element(name()));
  await expect.element(name()).toHaveValue("Sunday night");
  await keys("{Enter}");
  await expect.poll(() => titleOf(log()).name).toBe("Sunday night");
});
