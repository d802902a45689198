import { expect } from "vitest";
import { type EarCheckName, earChecks } from "#core/checks/check.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { english } from "#core/words/english.ts";
import type { benchPlayer } from "./bench-player.ts";
import { heading, type open, press } from "./open.tsx";

type Opened = ReturnType<typeof open>;
type Player = ReturnType<typeof benchPlayer>;

const text = (selector: string) => document.querySelector(selector)?.textContent ?? "";

const checkNow = (): EarCheckName | undefined =>
  earChecks.find((check) => english.checks[check].before === text("h1"));

/** Presses what answers one ask or look, as the bench's player hears and sees it. */
async function answerOne(opened: Opened, player: Player, mended = false): Promise<void> {
  const before = opened.log().length;
  const check = checkNow();
  if (check === undefined) await press(text(".you-see").replace(/^You look: |\.$/g, ""));
  else {
    const position = player.positionOf(text("section .tape"));
    await press("Play");
    await expect.element(heading()).toHaveTextContent("?");
    const heard = player.answers(check, position, mended);
    const seed = opened.player.calls.findLast((call) => call.asked === "play")?.seed ?? 0;
    const reversed = check === "pair" && pairOrder(seed) === "opposite first";
    for (const answer of reversed ? [...heard].reverse() : heard) await say(answer);
  }
  await expect.poll(() => opened.log().length).toBeGreaterThan(before);
}

/** Presses one answer by its accessible name. */
export async function say(answer: string): Promise<void> {
  if (answer.startsWith("faint, ")) await press("there, but faint");
  const name = answer.replace("faint, ", "");
  await press(name === "nothing" ? /^nothing/ : name);
}

/** Answers until the position needs nothing more; the class of the screen that says so. */
export async function answerAll(opened: Opened, player: Player, mended = false): Promise<string> {
  for (let asked = 0; asked < 20; asked++) {
    const end = document.querySelector("section.verdict, section.healthy");
    if (end !== null) return end.className;
    await answerOne(opened, player, mended);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("twenty answers were not enough");
}
