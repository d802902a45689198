import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import type { FakePlayer } from "#audio/fake-player.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { english } from "#core/words/english.ts";
import { open } from "#tests/browser/support/open.tsx";

/*
 * The screens in engines that take no presses from outside: whoever walks here finds buttons by what is on them and presses them in the
 * page itself.
 */

afterEach(cleanup);

const named = (start: string): HTMLElement | undefined =>
  [...document.querySelectorAll<HTMLElement>("button")].find((button) =>
    (button.getAttribute("aria-label") ?? button.textContent ?? "").trim().startsWith(start),
  );

/** Waits for a button that begins with some words, and presses it. */
async function press(start: string): Promise<void> {
  await expect.poll(() => named(start), { timeout: 8000 }).toBeDefined();
  named(start)?.click();
}

const { documentElement: root } = document;
const heading = () => document.querySelector("h1")?.textContent;
const heard = (text: string) => expect.poll(heading, { timeout: 8000 }).toContain(text);

/** What is said where all is well. */
const well: Readonly<Record<string, readonly string[]>> = {
  left: ["left ear"],
  right: ["right ear"],
  pair: ["middle", "all round"],
};

/** Answers what is asked at a healthy seat, until it needs nothing more. */
async function answerAll(player: FakePlayer): Promise<void> {
  while (named("Play") !== undefined) {
    const check = Object.keys(well).find(
      (one) => english.checks[one as "left"].before === heading(),
    );
    await press("Play");
    await heard("?");
    for (const place of inOrder(player, well[check ?? ""] ?? [])) await press(place);
    await new Promise((resolve) => setTimeout(resolve, 50)); // the next screen
  }
}

/** Of two bursts either may have come first. */
function inOrder(player: FakePlayer, places: readonly string[]): readonly string[] {
  const played = player.calls.findLast(({ asked }) => asked === "play");
  if (places.length < 2 || played?.asked !== "play") return places;
  return pairOrder(played.seed) === "opposite first" ? places.toReversed() : places;
}

test("the first screen, one round to its end, and the same session after a reload", {
  timeout: 60_000,
}, async () => {
  const { shelf, log, player } = open();
  expect(heading()).toBe("Leftwright");
  await press("One person");
  await heard("1 position to check");
  await press("1 you");
  await expect.poll(() => named("Play")).toBeDefined();
  await answerAll(player);
  await expect
    .poll(() => document.querySelector("section.healthy"), { timeout: 8000 })
    .not.toBeNull();
  expect(log().filter(({ entry }) => entry === "finding")).toHaveLength(3);
  open({ shelf });
  await press("Go on with the last session");
  await expect
    .poll(() => document.querySelector("section.healthy"), { timeout: 8000 })
    .not.toBeNull();
});

test("the look is chosen, and every theme is drawn in its own colours", async () => {
  open();
  await press("Look and language");
  const grounds: string[] = [];
  for (const theme of ["dark", "light", "red, for a dark stage"]) {
    await press(theme);
    await expect.poll(() => named(theme)?.getAttribute("aria-pressed")).toBe("true");
    await expect.poll(() => theme.startsWith(root.dataset.theme?.slice(0, 3) ?? "")).toBe(true);
    grounds.push(getComputedStyle(document.body).backgroundColor);
  }
  expect(new Set(grounds).size).toBe(3);
  expect(grounds.at(-1)).toBe("rgb(0, 0, 0)");
  const { scrollWidth } = document.documentElement;
  expect(scrollWidth).toBeLessThanOrEqual(innerWidth);
});
