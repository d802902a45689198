import { type Browser, type BrowserContext, chromium as engine, type Page } from "playwright";
import { expect } from "vitest";
import { chromium } from "#tests/support/chromium.ts";
import { type FileServer, serveFiles } from "./server.ts";

/** Somebody's browser at a server of the built page, and all that is asked and goes wrong in it. */
export interface Visit {
  readonly server: FileServer;
  readonly context: BrowserContext;
  readonly page: Page;
  /** Addresses of everything that was asked for, by any page or worker. */
  readonly asked: readonly string[];
  /** What the page's policy refused, and errors nobody caught. */
  readonly refused: readonly string[];
  readonly close: () => Promise<void>;
}

export const launched = async (): Promise<Browser> => engine.launch(await chromium());

export async function visit(browser: Browser, folder = "dist"): Promise<Visit> {
  const server = await serveFiles(folder);
  const context = await browser.newContext({ locale: "en-GB", reducedMotion: "reduce" });
  const asked: string[] = [];
  const refused: string[] = [];
  context.on("request", (request) => asked.push(request.url()));
  context.on("console", (message) => {
    if (/Content Security Policy/.test(message.text())) refused.push(message.text());
  });
  context.on("weberror", (error) => refused.push(String(error.error())));
  const page = await context.newPage();
  return {
    server,
    context,
    page,
    asked,
    refused,
    close: async () => {
      await context.close();
      await server.stop();
    },
  };
}

export const press = (page: Page, name: string | RegExp): Promise<void> =>
  page
    .getByRole("button", { name, exact: typeof name === "string" })
    .first()
    .click();

/** Waits until the page says that all of it is on the device. */
export async function kept(page: Page): Promise<void> {
  await press(page, /^Look and language/);
  await page.getByText("All of it is on this device").waitFor({ timeout: 20_000 });
  await press(page, /^Look and language/);
}

/** From now on there is no network, and no server either. */
export async function inFlight({ context, server }: Visit): Promise<void> {
  await server.stop();
  await context.setOffline(true);
}

/** Nothing left the place the page came from, and nothing was refused by its own policy. */
export function stayedHome({ asked, refused, server }: Visit): void {
  const own = [server.url, "data:", `blob:${new URL(server.url).origin}`];
  expect(asked.filter((url) => !own.some((start) => url.startsWith(start)))).toEqual([]);
  expect(refused).toEqual([]);
}
