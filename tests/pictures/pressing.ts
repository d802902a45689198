import type { Page } from "playwright";

/** Called wherever a screen stands that is to be looked at. */
export type Stand = (name: string) => Promise<void>;

/** A way through the page, from the first screen. */
export type Way = (page: Page, stand: Stand) => Promise<void>;

export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page
    .getByRole("button", { name, exact: typeof name === "string" })
    .first()
    .click({ timeout: 8000 });

/** Does something, and waits until what is on the screen is another: an answer is written and reckoned with before it is shown. */
export async function untilAnother(page: Page, act: () => Promise<unknown>): Promise<void> {
  const before = await page.locator("main").textContent();
  await act();
  await page.waitForFunction((was) => document.querySelector("main")?.textContent !== was, before, {
    timeout: 15_000,
  });
}
