import type { Page } from "playwright";
import { doing } from "#ui/words/english/doing.ts";
import { first } from "#ui/words/english/first.ts";
import { help } from "#ui/words/english/help.ts";
import { numbers } from "#ui/words/english/numbers.ts";
import { sheet } from "#ui/words/english/sheet.ts";
import { sounding } from "#ui/words/english/sounding.ts";
import { press, type Stand, untilAnother, type Way } from "./pressing.ts";

/** From the bench rig of that number to a verdict, and what is handed over: at seat 4 everything is heard all round, and nobody may touch anything. */
export const round =
  (number: number): Way =>
  async (page, stand) => {
    await page.getByLabel(first.start.number).fill(String(number));
    await press(page, first.start.bench);
    await page.getByRole("button", { name: /^4 guest/ }).waitFor();
    await stand("board before");
    await press(page, /^4 guest/);
    await stand("play");
    await toVerdict(page, stand);
    await press(page, first.board);
    await stand("board with trouble");
    await press(page, sheet.open);
    await page.locator("article.sheet").waitFor();
    await stand("sheet");
    await press(page, first.board);
    await press(page, doing.curtain);
    await stand("curtain");
  };

async function toVerdict(page: Page, stand: Stand): Promise<void> {
  const seen = new Set<string>();
  for (let step = 0; step < 20; step++) {
    const kind = (await page.locator("main section").first().getAttribute("class")) ?? "";
    if (kind !== "ask" && !seen.has(kind)) await stand(kind);
    if (/verdict|healthy/.test(kind)) return;
    await answered(page, kind, seen.size > 0 ? undefined : () => besides(page, stand));
    seen.add(kind);
  }
  throw new Error("no verdict in twenty steps");
}

const answered = (page: Page, kind: string, question?: () => Promise<void>): Promise<void> =>
  /do|look|twist/.test(kind) ? untilAnother(page, () => seenTo(page, kind)) : heard(page, question);

/** A first question, and what may be opened at it. */
async function besides(page: Page, stand: Stand): Promise<void> {
  await stand("question");
  await press(page, first.whatIsThis);
  await page.getByText(help.toWords).waitFor();
  await stand("question, help");
  await press(page, first.whatIsThis);
  await press(page, numbers.open);
  await page.getByText(numbers.beliefs).waitFor();
  await stand("question, numbers");
  await press(page, numbers.open);
}

/** What is wanted of hands and eyes. What was turned or put somewhere is put back: that is always possible. */
async function seenTo(page: Page, kind: string): Promise<void> {
  if (!kind.startsWith("do")) return page.locator(".sight").first().click({ timeout: 8000 });
  const refused = page.getByRole("button", { name: doing.notPossible, exact: true });
  await ((await refused.isVisible()) ? refused : page.locator(".do .main")).click();
}

async function heard(page: Page, question?: () => Promise<void>): Promise<void> {
  await listened(page);
  await question?.();
  for (const name of ["all round", "all round", "both cups", "never in the middle"]) {
    const button = page.getByRole("button", { name, exact: true });
    if (await button.isVisible()) await untilAnother(page, () => button.click());
  }
}

/** Plays, and waits until it can be answered. */
async function listened(page: Page): Promise<void> {
  const hands = page.getByRole("button", { name: sounding.handsOff });
  if (await hands.isVisible()) await hands.click();
  await press(page, sounding.play);
  await page
    .locator("section:not(.listening) :is(.spot, .push)")
    .first()
    .waitFor({ timeout: 15_000 });
}
