import type { Page } from "playwright";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type BuiltPage, openBuiltPage } from "./built-page.ts";
import type { Recording } from "./ears.ts";
import { press, pressOn } from "./press.ts";
import { goOn } from "./robot.ts";
import { forget, heardSince, prepare } from "./tap.ts";

let built: BuiltPage;
beforeAll(async () => {
  built = await openBuiltPage(4401);
});
afterAll(() => built.close());

const timeout = 300_000;

/** Runs on a page of its own, at its first screen. */
async function atThePage(go: (page: Page) => Promise<void>): Promise<void> {
  const context = await built.browser.newContext({
    viewport: { width: 900, height: 700 },
    reducedMotion: "reduce",
  });
  try {
    const page = await context.newPage();
    await prepare(page);
    await page.goto(built.url);
    await go(page);
  } finally {
    await context.close();
  }
}

const starting = (page: Page, words: string) =>
  pressOn(page.getByRole("button", { name: new RegExp(`^${words}`) }).first());

const rightDead = (heard: Recording): Recording => ({ ...heard, right: heard.right.map(() => 0) });
const inMono = ({ left, right, rate }: Recording): Recording => {
  const sum = left.map((sample, at) => (sample + (right[at] ?? 0)) / 2);
  return { left: sum, right: sum, rate };
};

const loudest = (samples: Float32Array): number =>
  samples.reduce((most, one) => Math.max(most, Math.abs(one)), 0);

const somebody = { url: "", rig: "", position: "", refuses: true };

describe.concurrent("each job, from the first screen, by what is heard at the output", () => {
  test(
    "everyone's headphones: one seat, the others with hands up, and the sheet",
    { timeout },
    () =>
      atThePage(async (page) => {
        await press(page, "Podcast table");
        await starting(page, "Listen at 1 host");
        const { end, checks } = await goOn(page, somebody);
        expect(end).toBe("healthy");
        await press(page, "board");
        await press(page, "All at once, hands up");
        for (const same of ["All the same, on", "All the same, on", "Done: all 3 the same"]) {
          await forget(page);
          await press(page, "Play to all");
          await page.getByRole("heading", { name: "Who points elsewhere?" }).waitFor();
          await page.waitForTimeout(250); // the recorder hands over in blocks
          const { left, right } = await heardSince(page);
          expect(Math.max(loudest(left), loudest(right))).toBeGreaterThan(0);
          await press(page, same);
        }
        await page.getByRole("heading", { name: "All 4 are healthy" }).waitFor();
        await press(page, "the sheet");
        await page.getByText("3 fiddle").or(page.getByText("3 guest")).first().waitFor();
        console.log(`a table of four: ${checks} answers and one pass`);
        expect((await page.locator(".sheet tbody").first().textContent()) ?? "").toContain(
          "4 producer",
        );
      }),
  );

  test("something sounds wrong: one ear", { timeout }, () =>
    atThePage(async (page) => {
      await press(page, "Something sounds wrong");
      await press(page, "Only the left ear works");
      for (const words of ["a headphone amplifier", "headphones", "2", "only this one"])
        await starting(page, words);
      const { end, text, checks } = await goOn(page, { ...somebody, spoilt: rightDead });
      console.log(`one ear: ${checks} answers, ${text.slice(0, 120)}`);
      expect(end).toBe("verdict");
      expect(text).toMatch(/right side does not arrive/);
    }),
  );

  test.for([
    ["a mono lead", inMono, "verdict"],
    ["a good lead", (heard: Recording) => heard, "healthy"],
  ] as const)("prove a lead by ear: %s", { timeout }, ([, spoilt, due]) =>
    atThePage(async (page) => {
      await press(page, "Prove a lead");
      for (const words of ["stereo jack three", "stereo jack three", "stereo jack lead", "by ear"])
        await starting(page, words);
      await press(page, "It is plugged in");
      const { end, heading, checks } = await goOn(page, { ...somebody, spoilt });
      console.log(`a lead by ear: ${checks} answers, ${heading}`);
      expect(end).toBe(due);
      expect(heading).toMatch(due === "healthy" ? /As it should be/ : /[Tt]ip and ring|both sides/);
    }),
  );
});
