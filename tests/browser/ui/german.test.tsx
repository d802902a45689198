import { cleanup } from "@testing-library/preact";
import { afterEach, expect, test } from "vitest";
import { page as tab } from "vitest/browser";
import { benchPlayer, numberOf } from "#tests/browser/support/bench-player.ts";
import { button, heading, open, press } from "#tests/browser/support/open.tsx";
import { answerAll } from "#tests/browser/support/walk.ts";
import { first as firstEnglish } from "#ui/words/english/first.ts";
import { words as english } from "#ui/words/english.ts";
import { first } from "#ui/words/german/first.ts";
import { words } from "#ui/words/german.ts";

afterEach(cleanup);

/** Every text of a record that is no entry made of facts. */
const textsIn = (record: unknown): readonly string[] => {
  if (typeof record === "string") return [record];
  if (typeof record !== "object" || record === null) return [];
  return Object.values(record).flatMap(textsIn);
};

const german = new Set(textsIn([words, first]));
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const notGerman = new Set(
  textsIn([english, firstEnglish])
    .filter((one) => !german.has(one))
    .flatMap((one) => [one, capital(one)]),
);

/** What is read and what is read out, piece by piece. */
function shown(): readonly string[] {
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  const texts: string[] = [];
  while (walker.nextNode()) texts.push(walker.currentNode.textContent ?? "");
  const labels = [...document.querySelectorAll("[aria-label], [aria-valuetext]")].flatMap((one) => [
    one.getAttribute("aria-label") ?? "",
    one.getAttribute("aria-valuetext") ?? "",
  ]);
  return [
    ...texts,
    ...labels,
    ...[...document.querySelectorAll("p, h1, h2, li, button")].map((one) => one.textContent ?? ""),
  ].map((text) => text.trim().replace(/\.$/, ""));
}

/** Words that no German text has: they find what the records make of facts. 'You' stands on the tape of a lone seat. */
const stopWords = /\b(the|is|are|and|of|it|to|left|right|nothing|not|no)\b/i;

const isEnglish = (text: string): boolean =>
  stopWords.test(text) || (!german.has(text) && notGerman.has(text));

function expectNoEnglish(where: string): void {
  const seen = shown();
  expect(seen.length, where).toBeGreaterThan(5);
  expect(seen.filter(isEnglish), where).toEqual([]);
}

test("a round in German, from the first screen to a position that is healthy, shows no English", {
  timeout: 60_000,
}, async () => {
  const number = numberOf("mixer / settings / mono");
  const player = benchPlayer(number);
  const opened = open({ seeds: [3, 5, 8, 13], tongues: ["de-AT", "en"] });
  expect(opened.player.spokenIn()).toBe("de");
  await tab.getByLabelText(first.start.number).fill(String(number));
  expectNoEnglish("the first screen");
  await press(first.start.bench);
  await expect.element(button(words.board.allAtOnce)).toBeVisible();
  expectNoEnglish("the board");
  await press(new RegExp(`^1 host, ${words.board.states["not heard"]}`));
  await expect.element(button(words.sounding.play)).toBeVisible();
  expectNoEnglish("a sound to play");
  expect(await answerAll(opened, player, false, words)).toBe("verdict");
  expectNoEnglish("a verdict");
  await expect.element(heading()).toHaveTextContent("»Mischpult« ist auf Mono geschaltet.");
  await press(words.doing.done);
  expect(await answerAll(opened, player, true, words)).toBe("healthy");
  expectNoEnglish("a healthy position");
  await press(first.board);
  await press(words.doing.curtain);
  await expect.element(heading()).toHaveTextContent("»Mischpult« ist auf Mono geschaltet.");
  expectNoEnglish("behind the curtain");
});

test("all at once, and a complaint, in German", async () => {
  open({ tongues: ["de"] });
  await press(first.start.bench);
  await press(words.board.allAtOnce);
  expectNoEnglish("all at once");
  await press(words.asking.handsUp.play);
  await expect.element(heading()).toHaveTextContent(words.asking.handsUp.question);
  expectNoEnglish("who points elsewhere");
  await press(words.asking.handsUp.stop);
  await press(words.board.anotherRig);
  await press(new RegExp(first.start.wrong));
  await expect.element(heading()).toHaveTextContent(words.complaint.questions.said);
  expectNoEnglish("a complaint");
  await press("Nur das rechte Ohr geht");
  await press(/^ein Kopfhörer.*verstärker/); // it may be broken in between
  await press(words.complaint.worn.headphones);
  await press("3");
  expectNoEnglish("who else");
  await press(words.complaint.others.none);
  await expect.element(button(words.doing.takeBack)).toBeVisible();
  expectNoEnglish("the screen after a complaint");
});

test("written from the right, the head still has its left ear on the left, and nothing runs out of the page", async () => {
  open({ tongues: ["de"] });
  await press(first.start.bench);
  await expect.element(button(words.board.allAtOnce)).toBeVisible();
  document.documentElement.dir = "rtl";
  const within = () => document.documentElement.scrollWidth <= window.innerWidth;
  expect(within()).toBe(true);
  await press(new RegExp(`^1 host, ${words.board.states["not heard"]}`));
  await press(words.sounding.play);
  await expect.element(button(words.asking.cannotTell)).toBeVisible();
  const leftOf = (name: string) => button(name).element().getBoundingClientRect().left;
  expect(leftOf(words.asking.spots["left ear"])).toBeLessThan(
    leftOf(words.asking.spots["right ear"]),
  );
  expect(within()).toBe(true);
  document.documentElement.dir = "ltr";
});
