import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { straightIn } from "#core/rig/rigs.ts";
import { derive } from "#core/session/derive.ts";
import { add, type Log } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { at } from "#tests/support/entries.ts";
import { clean } from "../support/clean.ts";
import { button, heading, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

/** One pair of headphones in a laptop, nothing heard yet; and its return lost. */
const fresh = add([], { entry: "drawing", rig: straightIn }, 0);
const returnLost = [
  ["left", "all round"],
  ["right", "all round"],
  ["pair", "nothing", "all round"],
].reduce<Log>(
  (so, [check, ...answers]) => at(so, "position 1", check as "left", ...answers),
  fresh,
);

const strip = () => tab.getByRole("region", { name: "In numbers" });

async function atSeat(log: Log) {
  const storage = createMemoryStorage();
  storage.setItem("leftwright.log", JSON.stringify(log));
  const opened = open({ storage });
  await press("Go on with the last session");
  await press(/^1 you/);
  await expect.element(button("numbers")).toBeVisible();
  return opened;
}

test("they are closed until somebody wants them, and then stay open wherever one goes", async () => {
  const { storage } = await atSeat(returnLost);
  await expect.element(button("numbers")).toHaveAttribute("aria-expanded", "false");
  await expect.element(strip()).not.toBeInTheDocument();
  await keys("n");
  await expect.element(strip()).toBeVisible();
  await press("board");
  await press(/^1 you/);
  await expect.element(strip()).toBeVisible();
  expect(JSON.parse(storage.getItem("leftwright.settings") ?? "{}")).toMatchObject({
    numbers: true,
  });
  await press("numbers");
  await expect.element(strip()).not.toBeInTheDocument();
});

test("opened by its key they come into sight, and the focus to what closes them", async () => {
  await tab.viewport(1280, 800);
  await atSeat(fresh);
  scrollTo(0, 0);
  await keys("n");
  await expect.element(strip()).toBeVisible();
  await expect.element(button("numbers")).toHaveFocus();
  const { top, bottom } = strip().element().getBoundingClientRect();
  expect(top).toBeGreaterThan(0);
  expect(Math.min(bottom, top + 300)).toBeLessThanOrEqual(innerHeight);
});

test("what stands there follows from the log", async () => {
  await atSeat(returnLost);
  await keys("n");
  await expect.element(strip()).toBeVisible();
  const standing = derive(returnLost)?.standing("position 1");
  const percent = (share = 0) => `${(share * 100).toFixed(1)} %`;
  const row = (name: RegExp) => strip().getByRole("row", { name });
  await expect.element(row(/^something audible/)).toHaveTextContent(percent(standing?.trouble));
  await expect
    .element(row(/^the return is lost in headphones 1/).first())
    .toHaveTextContent(percent(standing?.leading?.probability));
  await expect.element(row(/not on the list/)).toBeInTheDocument();
  // Sound: each side in its own ear; with the return lost both in both, one of them upside down, as loud as each other.
  const levels = [...document.querySelectorAll(".one-matrix")].map((one) =>
    [...one.querySelectorAll("td")].map(({ textContent }) =>
      (textContent ?? "")
        .replace("−", "-")
        .split(/ dB, |°/)
        .map(Number),
    ),
  );
  const [sound = [], lost = []] = levels;
  expect(sound[0]?.[0]).toBeGreaterThan((sound[1]?.[0] ?? 0) + 30);
  expect(Math.abs((lost[0]?.[0] ?? 0) - (lost[1]?.[0] ?? 9))).toBeLessThan(0.2);
  expect([lost[0]?.[1], lost[1]?.[1]]).toEqual([0, 180]);
  await clean("numbers");
});

test("before anything was heard each check tells something, the most for its seconds first", async () => {
  await atSeat(fresh);
  await keys("n");
  await expect.element(strip().getByRole("row", { name: /1 you, one knock/ })).toBeVisible();
  const rates = [...document.querySelectorAll(".numbers tr")].flatMap((one) => {
    const cells = [...one.querySelectorAll("td")].map(({ textContent }) => Number(textContent));
    return cells.length === 3 ? [cells[2] ?? 0] : [];
  });
  expect(rates.length).toBeGreaterThan(4);
  expect(rates).toEqual(rates.toSorted((a, b) => b - a));
  await expect.element(heading()).toBeVisible();
});
