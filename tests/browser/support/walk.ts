import { expect } from "vitest";
import { page as tab } from "vitest/browser";
import { balanceOf, neverCentred } from "#core/checks/balance.ts";
import { type EarCheckName, earChecks } from "#core/checks/check.ts";
import { holding } from "#core/session/log.ts";
import { pairOrder } from "#core/signals/burst-pair.ts";
import { answerText } from "#core/words/answer-text.ts";
import { words as english } from "#ui/words/english.ts";
import type { Words } from "#ui/words/use-words.ts";
import type { benchPlayer } from "./bench-player.ts";
import { heading, keys, type open, press } from "./open.tsx";

type Opened = ReturnType<typeof open>;
type Player = ReturnType<typeof benchPlayer>;

const text = (selector: string) => document.querySelector(selector)?.textContent ?? "";

const checkNow = ({ language }: Words): EarCheckName | undefined =>
  earChecks.find((check) => language.checks[check].before === text("h1"));

const movesIn = (opened: Opened) =>
  holding(opened.log()).flatMap((entry) => (entry.entry === "move" ? [entry.move] : []));

/** Answers one check by ear, as the bench's player hears it. */
async function answerByEar(
  opened: Opened,
  player: Player,
  check: EarCheckName,
  words: Words,
): Promise<void> {
  const position = player.positionOf(text("section .tape"));
  await press(words.sounding.play);
  await expect.element(heading()).toHaveTextContent("?");
  const heard = player.answers(check, position, movesIn(opened));
  if (check === "balance") return pushToTheMiddle(heard[0] ?? neverCentred, words);
  const seed = opened.player.calls.findLast((call) => call.asked === "play")?.seed ?? 0;
  const reversed = check === "pair" && pairOrder(seed) === "opposite first";
  for (const answer of reversed ? [...heard].reverse() : heard) await say(answer, words);
}

/** Pushes with the arrow keys as an answer tells, and says that it is there. */
async function pushToTheMiddle(answer: string, { language, asking }: Words): Promise<void> {
  if (answer === neverCentred) return press(answerText(language, neverCentred));
  const right = balanceOf(answer) ?? 0;
  const slide = tab.getByRole("slider");
  await expect.element(slide).toHaveFocus();
  await keys((right < 0 ? "{ArrowLeft}" : "{ArrowRight}").repeat(Math.abs(right)));
  await press(asking.balance.middle);
}

/** Presses what answers one ask, look or twist, or says that a move is made, or where nobody may touch anything that it is not possible. */
export async function answerOne(
  opened: Opened,
  player: Player,
  touching: boolean,
  words: Words = english,
): Promise<void> {
  const before = opened.log().length;
  const check = checkNow(words);
  if (check !== undefined) await answerByEar(opened, player, check, words);
  else if (document.querySelector("section.do")) await pressDone(touching, words);
  else await press(noticed(words));
  await expect.poll(() => opened.log().length).toBeGreaterThan(before);
}

async function pressDone(touching: boolean, { doing }: Words): Promise<void> {
  const done = [doing.done, doing.otherListener, doing.otherOperator];
  const there = [...document.querySelectorAll("button")].map((one) => one.textContent);
  await press(
    (touching ? done.find((one) => there.includes(one)) : undefined) ?? doing.notPossible,
  );
}

/** What the page tells somebody with no gear that a look or a twist would show, as its answer has it. */
function noticed({ asking }: Words): string {
  const said = text(".you-see");
  const [before = "", after = ""] =
    [asking.look.bench, asking.twist.bench]
      .map((how) => how("@").split("@"))
      .find(([start = ""]) => said.startsWith(start)) ?? [];
  return said.slice(before.length, said.length - after.length);
}

/** Presses one answer by its accessible name. */
export async function say(answer: string, { language, asking }: Words = english): Promise<void> {
  if (answer.startsWith("faint, ")) await press(asking.faint);
  const name = answer.replace("faint, ", "");
  if (name === "nothing" || name === "something")
    return press(
      new RegExp(`^(${answerText(language, name)}|${name === "nothing" ? asking.silent : name})$`),
    );
  const spots: Readonly<Record<string, string>> = asking.spots;
  await press(spots[name] ?? answerText(language, name));
}

/** Answers, and makes the moves that are asked for, until the position needs nothing more; the class of the screen that says so. */
export async function answerAll(
  opened: Opened,
  player: Player,
  touching = true,
  words: Words = english,
): Promise<string> {
  for (let asked = 0; asked < 30; asked++) {
    // It went on to the next position by itself.
    if (document.querySelector(".came") !== null) {
      await press(words.round.lookAgain);
      await expect.poll(() => document.querySelector("section.healthy")).not.toBeNull();
    }
    const end = document.querySelector("section.verdict, section.healthy");
    if (end !== null) return end.className;
    await answerOne(opened, player, touching, words);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error("thirty answers were not enough");
}
