import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { holding } from "#core/session/log.ts";
import { english } from "#core/words/english.ts";
import { benchPlayer, numberOf } from "#tests/browser/support/bench-player.ts";
import { clean } from "#tests/browser/support/clean.ts";
import { heading, keys, open, openBench, press } from "#tests/browser/support/open.tsx";
import { answerOne } from "#tests/browser/support/walk.ts";

afterEach(cleanup);

const number = numberOf("laptop / settings / balance off to the left");

/** To where the noise is to be pushed to the middle. */
async function opened() {
  const at = open({ seeds: [3, 5, 8, 13] });
  const player = benchPlayer(number);
  await openBench(number);
  await press(/^1 host, not heard yet/);
  for (let asked = 0; asked < 12; asked++) {
    await expect.element(heading()).toBeVisible();
    if (document.querySelector("h1")?.textContent === english.checks.balance.before) return at;
    await answerOne(at, player, false);
    await new Promise((resolve) => setTimeout(resolve, 400));
  }
  throw new Error("twelve answers did not lead to it");
}

const found = (log: () => Parameters<typeof holding>[0]) =>
  holding(log())
    .flatMap((entry) => (entry.entry === "finding" ? [entry.finding] : []))
    .at(-1);

test("a noise is pushed to the middle with the arrow keys; how far is the finding", async () => {
  const { player, log } = await opened();
  await clean("balance before");
  await press("Play");
  const play = player.calls.findLast(({ asked }) => asked === "play");
  expect(play).toMatchObject({ name: "balance-tone", how: { loop: true, balanced: true } });
  await expect.element(tab.getByRole("slider")).toHaveFocus();
  await clean("balance");
  await keys("{ArrowRight}{ArrowRight}{ArrowRight}{ArrowLeft}{ArrowRight}{ArrowRight}");
  await expect.poll(() => player.world().balance).toBe(4);
  await expect.element(tab.getByRole("slider")).toHaveAttribute("aria-valuetext", "right up 4 dB");
  await press("It is in the middle");
  await expect
    .poll(() => found(log))
    .toMatchObject({
      asked: { check: "balance" },
      results: [["in the middle with the right up 4 dB"]],
    });
  expect(player.world().playing).toBe(false);
});

test("it may never be there, and Esc only silences it", async () => {
  const { player, log } = await opened();
  const before = log().length;
  await press("Play");
  await expect.element(tab.getByRole("slider")).toHaveFocus();
  await keys("{Escape}");
  await expect.element(tab.getByRole("slider")).toHaveAttribute("aria-disabled", "true");
  await expect.element(tab.getByRole("slider")).toHaveFocus();
  await keys("{ArrowRight}");
  expect(player.world().balance).toBe(0);
  await expect.poll(() => player.world().playing).toBe(false);
  expect(log().length).toBe(before);
  await press("Play");
  await press("never in the middle");
  await expect.poll(() => found(log)).toMatchObject({ results: [["never in the middle"]] });
});
