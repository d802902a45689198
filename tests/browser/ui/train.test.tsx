import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { build } from "#core/rig/rig.ts";
import { fromHeadphoneSocket } from "#core/rig/rigs.ts";
import { questionAfter, roundAt } from "#core/training/round.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";
import { button, keys, open, press } from "../support/open.tsx";

afterEach(cleanup);

const rig = build(fromHeadphoneSocket("one seat", ["you"]));

/** The first round whose first question is about ohms: its seed, and what is right, by place and in words. */
function roundOfOhms() {
  for (let seed = 1; seed < 1000; seed++) {
    const { choices, right } = questionAfter(roundAt(rig, "position 1", seed), []);
    const at = choices.findIndex(({ id }) => id === right);
    const fault = choices[at]?.faults[0];
    const text = fault ? faultText(english, rig, fault) : "";
    if (text.includes("Ω")) return { seed, at, text };
  }
  throw new Error("no round begins with ohms");
}

test("ohms stay ohms in what is said of an answer, and in the score", async () => {
  const { seed, at, text } = roundOfOhms();
  open({ seeds: [seed] });
  await press("Train your ears: name the fault");
  await expect.element(button(/what is it/)).toBeVisible();
  await keys(String(at + 1));
  await expect
    .poll(() => document.querySelector("[role='status']")?.textContent)
    .toContain(`Right: ${text}.`);
  await keys("{Enter}");
  await expect
    .poll(() => document.querySelector(".score li")?.textContent?.toLowerCase())
    .toContain(`${text.toLowerCase()}: 1 of 1`);
});
