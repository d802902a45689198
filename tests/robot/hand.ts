import type { Page } from "playwright";
import { press, say } from "./press.ts";

export const shown = (page: Page, name: string): Promise<boolean> =>
  page.getByRole("button", { name, exact: true }).first().isVisible();

/** Where the page is muted, says that what it waits for is done. */
export async function unmutes(page: Page): Promise<boolean> {
  for (const quiet of ["Hands are off the gear", "The volume is back down"])
    if (await shown(page, quiet)) {
      await press(page, quiet);
      return true;
    }
  return false;
}

/** Makes a move, where it may; nobody else is there to listen or to write. */
export async function make(page: Page, refuses: boolean): Promise<"move" | "press"> {
  const done = (await page.locator(".do .main").textContent()) ?? "";
  const optional = await shown(page, "Not possible here");
  if (optional && (refuses || done.startsWith("Somebody else"))) {
    await say(page, "Not possible here");
    return "press";
  }
  await say(page, done);
  return "move";
}

/** Says what is to be seen or felt; with real gear, where nothing is out of place, that all is as it should be. */
export async function look(page: Page): Promise<void> {
  const sight = page.getByText(/^You (look|twist): /);
  const text = (await sight.isVisible()) ? await sight.textContent() : undefined;
  const seen = text?.replace(/^You (look|twist): /, "").replace(/\.$/, "");
  const steady = (await page.locator(".twist").isVisible())
    ? "nothing changes"
    : "all as it should be";
  await say(page, seen ?? steady);
}
