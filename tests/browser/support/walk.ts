import { expect } from "vitest";
import { page as tab } from "vitest/browser";
import { neverCentred } from "#core/checks/balance.ts";
import { type EarCheckName, earChecks } from "#core/checks/check.ts";
import { holding } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { english } from "#core/words/english.ts";
import type { benchPlayer } from "./bench-player.ts";
import { heading, keys, type open, press } from "./open.tsx";

type Opened = ReturnType<typeof open>;
type Player = ReturnType<typeof benchPlayer>;

const text = (selector: string) => document.querySelector(selector)?.textContent ?? "";

const checkNow = (): EarCheckName | undefined =>
  earChecks.find((check) => english.checks[check].before === text("h1"));

const movesIn = (opened: Opened) =>
  holding(opened.log()).flatMap((entry) => (entry.entry === "move" ? [entry.move] : []));

/** Answers one check by ear, as the bench's player hears it. */
async function answerByEar(opened: Opened, player: Player, check: EarCheckName): Promise<void> {
  const position = player.positionOf(text("section .tape"));
  await press("Play");
  await expect.element(heading()).toHaveTextContent("?");
  const heard = player.answers(check, position, movesIn(opened));
  if (check === "balance") return pushToTheMiddle(heard[0] ?? neverCentred);
  const seed = opened.player.calls.findLast((call) => call.asked === "play")?.seed ?? 0;
  const reversed = check === "pair" && pairOrder(seed) === "opposite first";
  for (const answer of reversed ? [...heard].reverse() : heard) await say(answer);
}

/** Pushes with the arrow keys as an answer tells, and says that it is there. */
async function pushToTheMiddle(answer: string): Promise<void> {
  if (answer === neverCentred) return press(neverCentred);
  const [, side, by = "0"] = answer.match(/the (left|right) up (\d+) dB/) ?? [];
  const slide = tab.getByRole("slider");
  await expect.element(slide).toHaveFocus();
  await keys((side === "left" ? "{ArrowLeft}" : "{ArrowRight}").repeat(Number(by)));
  await press("It is in the middle");
}

/** Presses what answers one ask, look or twist, or says that a move is made, or where nobody may touch anything that it is not possible. */
export async function answerOne(opened: Opened, player: Player, touching: boolean): Promise<void> {
  const before = opened.log().length;
  const check = checkNow();
  if (check !== undefined) await answerByEar(opened, player, check);
  else if (document.querySelector("section.do"))
    await press(touching ? /check again$/ : "Not possible here");
  else await press(text(".you-see").replace(/^You (look|twist): |\.$/g, ""));
  await expect.poll(() => opened.log().length).toBeGreaterThan(before);
}

/** Presses one answer by its accessible name. */
export async function say(answer: string): Promise<void> {
  if (answer.startsWith("faint, ")) await press("there, but faint");
  const name = answer.replace("faint, ", "");
  await press(name === "nothing" ? /^nothing/ : name);
}

/** Answers, and makes the moves that are asked for, until the position needs nothing more; the class of the screen that says so. */
export async function answerAll(opened: Opened, player: Player, touching = true): Promise<string> {
  for (let asked = 0; asked < 30; asked++) {
    const end = document.querySelector("section.verdict, section.healthy");
    if (end !== null) return end.className;
    await answerOne(opened, player, touching);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("thirty answers were not enough");
}
