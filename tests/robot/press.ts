import type { Locator, Page } from "playwright";

/** As long as a button may take to hold still, milliseconds. With eight pages on two cores a page may go without a frame for longer. */
const patience = 3000;

/**
 * Waits for a button to stand still, as a hand would. Chromium now and then gives one of eight pages no more frames: there is nothing
 * to tell by, and its mouse hits what stood there in the last frame. Then by key.
 */
export async function pressOn(button: Locator): Promise<void> {
  await button.waitFor();
  await button.click({ timeout: patience }).catch(async () => {
    // The press may have come through, and its answer not.
    if (await button.isVisible())
      await button.press("Enter", { timeout: patience }).catch(() => undefined);
  });
}

/** The same, by the name that is on it. */
export const press = (page: Page, name: string): Promise<void> =>
  pressOn(page.getByRole("button", { name, exact: true }));

/** Presses what answers, and sees that it was taken: the screen shows something else. */
export async function say(page: Page, name: string): Promise<void> {
  const before = await shownBy(page);
  await press(page, name);
  await page
    .waitForFunction((text) => document.querySelector("main")?.textContent !== text, before, {
      timeout: patience,
    })
    .catch(() => undefined);
}

/** All the words that a page shows. */
export const shownBy = async (page: Page): Promise<string> =>
  (await page.getByRole("main").textContent()) ?? "";
