import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { empty } from "#tests/support/entries.ts";
import { help as english } from "#ui/words/english/help.ts";
import { help as german } from "#ui/words/german/help.ts";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

/** All behind the first screen comes unbundled here. */
const first = { timeout: 12_000 };
const question = () => document.querySelector("#help .help-question")?.textContent;
const storage = () => {
  const kept = createMemoryStorage();
  kept.setItem("leftwright.log", JSON.stringify(empty));
  return kept;
};

test("each screen answers its own question where it stands, and closes as another comes", {
  timeout: 30_000,
}, async () => {
  open({ storage: storage() });
  await press("what is this?");
  await expect.poll(question, first).toBe(english.screens.start.question);
  await expect.element(button("what is this?")).toHaveAttribute("aria-expanded", "true");
  await clean("help");
  await press("Go on with the last session");
  await expect.element(heading()).toHaveTextContent("5 positions to check");
  expect(question()).toBeUndefined();
  await keys("?");
  await expect.poll(question).toBe(english.screens.board.question);
  await keys("?");
  await expect.poll(question).toBeUndefined();
  await press(/^5 desk/);
  await expect.element(button(/Hands are off|Play/)).toBeVisible();
  await press("what is this?");
  await expect.poll(question).toBe(english.screens.asked.question);
  await clean("help of a question");
});

test("in German it is answered in German", async () => {
  open({ storage: storage(), tongues: ["de"] });
  await press("was ist das?");
  await expect.poll(question, first).toBe(german.screens.start.question);
});

test("the words of the trade are a press away, found as one types or by their letter, and lead back", async () => {
  open({ storage: storage() });
  await press("Go on with the last session");
  await expect.element(heading()).toHaveTextContent("5 positions to check");
  await press("what is this?");
  await press("The words of the trade");
  await expect.element(heading()).toHaveTextContent("The words of the trade");
  const terms = () => [...document.querySelectorAll("dt")].map((one) => one.textContent ?? "");
  const all = terms();
  expect(all).toEqual(all.toSorted(new Intl.Collator("en").compare));
  await clean("words");
  await press("S");
  await expect
    .poll(() => document.activeElement?.textContent)
    .toBe(all.find((one) => /^s/i.test(one)));
  await tab.getByLabelText("Find a word").click();
  await keys("belt pack");
  await expect.element(tab.getByLabelText("Find a word")).toHaveValue("belt pack");
  await tab.getByLabelText("Find a word").fill("tip");
  await expect.poll(() => terms()[0]).toBe("tip");
  expect(terms().length).toBeLessThan(all.length / 2);
  await tab.getByLabelText("Find a word").fill("xyzzy");
  await expect.poll(() => document.body.textContent).toContain("No word here has that in it.");
  expect(terms()).toEqual([]);
  await press("board");
  await expect.element(heading()).toHaveTextContent("5 positions to check");
});

test("of the two strips one is open; Escape closes it and gives the focus back", async () => {
  open({ storage: storage() });
  await expect.element(heading()).toHaveTextContent("Leftwright");
  await press(/Look and language/);
  await expect.element(button(/^light/)).toBeVisible();
  await keys("?");
  await expect.poll(question, first).toBe(english.screens.start.question);
  expect(document.querySelector("#look-strip")).toBeNull();
  await press("The words of the trade");
  await expect.element(heading()).toHaveTextContent("The words of the trade");
  await press(/Look and language/);
  await button(/^light/).click();
  await keys("{Escape}");
  await expect.poll(() => document.querySelector("#look-strip")).toBeNull();
  await expect.element(button(/Look and language/)).toHaveFocus();
  await press("back");
});

test("a ticked box takes no letters", async () => {
  open({ storage: storage() });
  await press(/^Test sounds/);
  const box = tab.getByRole("checkbox").first();
  await box.click();
  await expect.element(box).toHaveFocus();
  await keys("?");
  await expect.poll(question, first).toBe(english.screens.sounds.question);
});
