import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { answer, questionAfter, roundAt } from "#core/training/round.ts";
import type { Answered } from "#core/training/score.ts";
import { button, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

test("a round by keys: right and wrong are said, and the score is what the answers add up to", async () => {
  const { player } = open({ seeds: [7] });
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  const round = roundAt(build(fromHeadphoneSocket("one seat", ["you"])), "position 1", 7);
  const answered: Answered[] = [];
  for (const wrong of [false, true, false]) {
    const question = questionAfter(round, answered);
    const at = question.choices.findIndex(({ id }) => (id === question.right) !== wrong);
    const given = question.choices[at]?.id ?? "";
    await keys("f");
    await expect.poll(() => player.calls.at(-1)?.asked, { timeout: 8000 }).toBe("audition");
    await keys(String(at + 1));
    await expect
      .poll(() => document.querySelector("[role='status']")?.textContent)
      .toMatch(wrong ? /^No, it was this:/ : /^Right:/);
    answered.push(answer(question, given));
    await keys("{Enter}");
    await expect.poll(() => document.querySelector("[role='status']")).toBeNull();
  }
  await expect
    .poll(() => document.querySelector(".score summary")?.textContent)
    .toBe("3 heard, 2 named");
});
