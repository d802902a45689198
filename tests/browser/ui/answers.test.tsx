import { cleanup, render } from "@testing-library/preact";
import { afterEach, describe, expect, test, vi } from "vitest";
import { earCheck } from "#core/checks/catalogue.ts";
import { type PairOrder, pairOrder } from "#core/signals/burst-pair.ts";
import { Answers } from "#ui/screens/answers.tsx";
import { afterAnswer, asHeard, beforePlaying } from "#ui/screens/ask-state.ts";
import { words } from "#ui/words/english.ts";
import { WordsContext } from "#ui/words/use-words.ts";
import { button, heading, open, press } from "../support/open.tsx";
import { doubleTap } from "../support/touch.ts";
import { say } from "../support/walk.ts";

afterEach(cleanup);

const seedFor = (order: PairOrder) =>
  [1, 2, 3, 4, 5, 6, 7, 8].find((seed) => pairOrder(seed) === order) ?? 0;

const answersTo = (
  check: "left" | "cup" | "silence",
  more: { facing?: boolean; exchanged?: boolean } = {},
) => {
  const onAnswer = vi.fn();
  const [question = earCheck("left").questions[0]] = earCheck(check).questions;
  if (question === undefined) throw new Error("this check asks nothing");
  render(
    <WordsContext.Provider value={words}>
      <h1 id="question">Where was it?</h1>
      <Answers
        check={check}
        question={question}
        facing={false}
        exchanged={false}
        follows={false}
        changes={false}
        onChanges={undefined}
        onAnswer={onAnswer}
        onAgain={() => {}}
        {...more}
      />
    </WordsContext.Provider>,
  );
  return { onAnswer, question };
};

const leftOf = (name: string) => button(name).element().getBoundingClientRect().left;

describe("answers", () => {
  test("every place is a button of at least 44 pixels, by its name", async () => {
    answersTo("left");
    for (const name of [
      "left ear",
      "right ear",
      "middle",
      "off to the left",
      "off to the right",
      "all round",
    ]) {
      const { width, height } = button(name).element().getBoundingClientRect();
      expect(Math.min(width, height), name).toBeGreaterThanOrEqual(44);
    }
  });

  test("'faint' modifies the place pressed next", async () => {
    const { onAnswer } = answersTo("left");
    await press("there, but faint");
    await expect.element(button("there, but faint")).toHaveAttribute("aria-pressed", "true");
    await press("left ear");
    expect(onAnswer).toHaveBeenCalledWith(["faint, left ear"]);
  });

  test("'can't tell' is every answer there is", async () => {
    const { onAnswer, question } = answersTo("left");
    await press("can't tell");
    expect(onAnswer).toHaveBeenCalledWith(question.answers);
  });

  test("facing them, the listener's left is on the right", () => {
    answersTo("left");
    expect(leftOf("left ear")).toBeLessThan(leftOf("right ear"));
    cleanup();
    answersTo("left", { facing: true });
    expect(leftOf("left ear")).toBeGreaterThan(leftOf("right ear"));
  });

  test("worn backwards, the letters on the cups stand the other way round", () => {
    answersTo("cup");
    expect(leftOf("cup marked L")).toBeLessThan(leftOf("cup marked R"));
    cleanup();
    answersTo("cup", { exchanged: true });
    expect(leftOf("cup marked L")).toBeGreaterThan(leftOf("cup marked R"));
  });

  test("a silence asks for nothing or something", async () => {
    const { onAnswer } = answersTo("silence");
    await press("something");
    expect(onAnswer).toHaveBeenCalledWith(["something"]);
  });
});

describe("the pair", () => {
  const pair = earCheck("pair");

  test.each(["in phase first", "opposite first"] as const)(
    "%s: what was heard first is stored in the core's order",
    (order) => {
      const seed = seedFor(order);
      const [first = [], second = []] = asHeard(pair, seed, [["middle"], ["all round"]]);
      const state = { ...beforePlaying, phase: "question", seed, given: [first] } as const;
      const asked = { check: "pair", position: "position 1" } as const;
      expect(afterAnswer(pair, asked, state, second)).toEqual({
        asked,
        results: [["middle"], ["all round"]],
      });
    },
  );

  test("opposite first, pressed: the second answer is the in-phase one", async () => {
    const { log } = await askedAboutThePair();
    await say("all round");
    await expect.element(heading()).toHaveTextContent("Where was the second?");
    // What was answered outlives a look at where it plays.
    await press(/^to whatever the system/);
    await expect.element(heading()).not.toHaveTextContent("Where was the second?");
    await press("back");
    await expect.element(heading()).toHaveTextContent("Where was the second?");
    await say("middle");
    await expect
      .poll(() => log().at(-1))
      .toMatchObject({
        finding: { asked: { check: "pair" }, results: [["middle"], ["all round"]] },
      });
  });
});

/** Answers what comes first, until the pair's first burst is asked about. */
async function askedAboutThePair() {
  const opened = open({ seeds: [seedFor("opposite first")] });
  const { log } = opened;
  await press("One person");
  await press(/^1 you/);
  await expect.element(button("Play")).toBeVisible();
  for (;;) {
    const check = document.querySelector("h1")?.textContent ?? "";
    const before = log().length;
    await press("Play");
    if (check.includes("rushes")) break;
    await say(check.includes("quick") ? "right ear" : "left ear");
    await expect.poll(() => log().length).toBeGreaterThan(before);
  }
  await expect.element(heading()).toHaveTextContent("Where was the first?");
  return opened;
}

test("two quick taps of a finger answer one question", async () => {
  const { log } = await askedAboutThePair();
  const { length } = log();
  // The two taps of a busy machine may lie further apart than a hand's.
  const slowly = document.head.appendChild(document.createElement("style"));
  slowly.textContent = ".follows { animation-duration: 1.5s }";
  // Beside other pages Chromium now and then takes no touch at all.
  await vi.waitFor(
    async () => {
      if (headed("first")) await doubleTap(button("middle").element());
      expect(headed("second")).toBe(true);
    },
    { timeout: 10_000, interval: 100 },
  );
  slowly.remove();
  await press("all round");
  await expect.poll(() => log().length).toBe(length + 1);
  expect(log().at(-1)).toMatchObject({ finding: { results: [["all round"], ["middle"]] } });
});

const headed = (which: string) => document.querySelector("h1")?.textContent?.includes(which);

test("the last answer is taken back, and asked again", async () => {
  const opened = open();
  await press("One person");
  await press(/^1 you/);
  await expect.element(heading()).toHaveTextContent(/knock/);
  const first = document.querySelector("h1")?.textContent;
  await press("Play");
  await press("middle");
  await press("take the last answer back");
  await expect
    .poll(() => opened.log().map(({ entry }) => entry))
    .toEqual(["drawing", "finding", "taken back"]);
  await expect.element(heading()).toHaveTextContent(first ?? "");
});
