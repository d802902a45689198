import { cleanup } from "@testing-library/preact";
import { afterEach, describe, expect, test } from "vitest";
import { cdp, page as tab } from "vitest/browser";
import { clientId } from "#core/rig/rig.ts";
import { standIn } from "#core/rig/stand-ins.ts";
import { add, type Log, type Said } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const wayIn = "Something sounds wrong";
const focused = () => document.activeElement?.textContent?.trim() ?? "";
const note = () => document.querySelector(".me-or-gear")?.textContent;

test("from the start to the next single move by keys alone, a dead ear with the rig half known", async () => {
  const { log } = open();
  for (let tabs = 0; tabs < 30 && focused() !== wayIn; tabs++) await keys("{Tab}");
  await keys("{Enter}");
  await expect.element(heading()).toHaveTextContent("What do they say?");
  await keys("{Tab}{Tab}");
  for (let tabs = 0; tabs < 6 && focused() !== "Only the left ear works"; tabs++)
    await keys("{Tab}");
  await keys("{Enter}");
  await expect.element(heading()).toHaveTextContent("hang on");
  expect(note()).toMatch(/same ear/);
  for (const words of ["a headphone amplifier", "headphones", "2", "only this one"]) {
    await keys("{Tab}");
    for (let arrows = 0; arrows < 12 && !focused().startsWith(words); arrows++)
      await keys("{ArrowRight}");
    expect(focused()).toMatch(new RegExp(`^${words}`));
    await keys("{Enter}");
  }
  await expect.poll(() => log().length).toBe(3);
  expect(log()).toMatchObject([
    { entry: "drawing" },
    { finding: { asked: { position: "position 2" }, results: [["no complaint"]] } },
    { finding: { asked: { position: "position 1" }, results: [["only the left ear works"]] } },
  ]);
  await expect.element(tab.getByText("1, the complaint: only the left ear works")).toBeVisible();
  await expect.element(heading()).toBeVisible();
});

test("the way back unsays one answer after the other", async () => {
  const { log } = open();
  await press(wayIn);
  await press("The voice is gone");
  await press(/^a phone/);
  await press("back");
  await expect.element(heading()).toHaveTextContent("hang on");
  expect(note()).toBeUndefined();
  await press("back");
  await expect.element(heading()).toHaveTextContent("What do they say?");
  await press("back");
  await expect.element(heading()).toHaveTextContent("Leftwright");
  expect(log()).toEqual([]);
});

test("a word of their own stands for all it may mean", async () => {
  const { log } = open();
  await press(wayIn);
  await tab.getByText("In their own words").click();
  await press("karaoke");
  await press(/^a computer/);
  await press("headphones");
  await press("just one");
  await expect
    .poll(() => log().at(-1))
    .toMatchObject({
      finding: { results: [["no voice", "hollow or thin"]] },
    });
});

test("in-ears: the words for whoever wears them never say to turn them round", async () => {
  open();
  await press(wayIn);
  await press("Only one ear works");
  await press(/^a belt pack/);
  await press("in-ears");
  await expect.element(heading()).toHaveTextContent("How many");
  expect(note()).toMatch(/never turned round/);
});

test("a complaint in the rig of the last session asks who, and goes on in the same log", async () => {
  const { log } = open();
  await press("Tallow Hall story evening");
  await press("another rig");
  await press(wayIn);
  await press("Left and right are swapped");
  await press(/^Tallow Hall story evening/);
  await press("3 fiddle");
  await press("nobody asked yet");
  await expect.poll(() => log().length).toBe(2);
  expect(log().at(-1)).toMatchObject({ finding: { asked: { position: "position 3" } } });
});

/** A kept session in which one person heard mono, and saw nothing out of order at some places. */
function heardInMono(places: readonly string[]) {
  const shelf = createMemoryShelf();
  const found = (check: string, results: readonly (readonly string[])[]) =>
    ({ entry: "finding", finding: { asked: { check, position: "position 1" }, results } }) as Said;
  const looked = places.map(
    (place): Said => ({
      entry: "finding",
      finding: { asked: { check: "look", place }, results: [["as it should be"]] },
    }),
  );
  const said: readonly Said[] = [
    { entry: "drawing", rig: standIn({ feed: "laptop", listeners: 1 }) },
    found("complaint", [["the same in both ears"]]),
    found("left", [["middle"]]),
    found("right", [["middle"]]),
    found("pair", [["middle"], ["nothing"]]),
    ...looked,
  ];
  shelf.lay(
    "kept",
    said.reduce((log: Log, one) => add(log, one, 0), []),
  );
  return shelf;
}

describe("is it meant to be like that?", () => {
  test("is asked before mono is called a fault; where it is, nothing is to mend", async () => {
    const { log } = open({ shelf: heardInMono(["source"]) });
    await press("Go on with the last session");
    await press(/^1 you/);
    await expect.element(heading()).toHaveTextContent("Is it meant to be like that?");
    await press("it is meant to be mono");
    await expect
      .poll(() => log().at(-1))
      .toMatchObject({
        finding: { asked: { check: "look", place: clientId } },
      });
    await expect.element(heading()).toHaveTextContent("The feed is meant to be mono");
    await expect.element(tab.getByText(/Nothing to mend/i)).toBeVisible();
    expect(document.body.textContent).not.toContain("Volume down first");
    await press("To the board");
    await expect.element(heading()).toHaveTextContent("It is healthy");
    await expect.element(button("1 you, the feed is meant to be mono")).toBeVisible();
  });
});

describe.each(["dark"] as const)("%s, and other themes by their colours", (scheme) => {
  test.each([
    [1280, 800],
    [390, 844],
  ] as const)("every step is accessible at %i by %i", async (width, height) => {
    const features = [
      { name: "prefers-color-scheme", value: scheme },
      { name: "prefers-reduced-motion", value: "reduce" },
    ];
    await cdp().send("Emulation.setEmulatedMedia", { features });
    await tab.viewport(width, height);
    open();
    await clean("the start");
    await press(wayIn);
    for (const details of document.querySelectorAll("details")) details.open = true;
    for (const answer of [
      "Only the right ear works",
      /^a headphone amplifier/,
      "headphones",
      "3",
      "all of them",
    ]) {
      await expect.element(button(answer)).toBeVisible();
      await clean(`before ${answer}`);
      for (const one of document.querySelectorAll<HTMLElement>(".complaint button")) {
        const box = one.getBoundingClientRect();
        expect(Math.min(box.width, box.height), one.outerHTML).toBeGreaterThanOrEqual(44);
      }
      await press(answer);
    }
    cleanup();
    open({ shelf: heardInMono(["source"]) });
    await press("Go on with the last session");
    await press(/^1 you/);
    await expect.element(heading()).toHaveTextContent("Is it meant to be like that?");
    await clean("is it meant");
  });
});
