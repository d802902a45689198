import { chromium as engine } from "playwright";
import puppeteer from "puppeteer-core";
import { chromium } from "#tests/support/chromium.ts";
import type { Pulse } from "#tests/support/pulse.ts";

/** A page in some browser, pressed from outside with a real pointer. */
export interface OpenPage {
  /** The value of an expression in the page; a promise is waited for. */
  readonly ask: <T>(expression: string) => Promise<T>;
  readonly click: (selector: string) => Promise<void>;
  readonly reload: () => Promise<unknown>;
  /** Of the browser's first process; undefined where it is not known. */
  readonly pid: number | undefined;
  /** A question of the browser's own protocol for developers; undefined where there is none. */
  readonly inspect: ((question: string) => Promise<unknown>) | undefined;
  readonly close: () => Promise<void>;
}

export type OpenIn = (url: string, pulse: Pulse) => Promise<OpenPage>;

/** Chromium, which plays to an output of the server. */
export const inChromium: OpenIn = (url, pulse) => chromiumAt(url, pulse, []);

/** The same where somebody allowed the names of the outputs to be seen. */
export const inChromiumThatNames: OpenIn = (url, pulse) => chromiumAt(url, pulse, [allowed]);

/** Grants the microphone, and with it the names. */
const allowed = "--use-fake-ui-for-media-stream";

/** One Chromium with several pages, allowed to record or not. */
export const chromiumWith = (pulse: Pulse, recording: boolean): Promise<OpenBrowser> =>
  browserAt(pulse, recording ? [allowed] : []);

async function chromiumAt(url: string, pulse: Pulse, more: readonly string[]): Promise<OpenPage> {
  const browser = await browserAt(pulse, more);
  const page = await browser.open(url);
  return { ...page, close: browser.close };
}

interface OpenBrowser {
  readonly open: (url: string) => Promise<OpenPage>;
  readonly close: () => Promise<void>;
}

async function browserAt(pulse: Pulse, more: readonly string[]): Promise<OpenBrowser> {
  const launch = await chromium();
  const server = await engine.launchServer({
    ...launch,
    args: [...(launch.args ?? []), ...more],
    env: { ...launch.env, ...pulse.env },
  });
  const browser = await engine.connect(server.wsEndpoint());
  const open = async (url: string): Promise<OpenPage> => {
    const context = await browser.newContext({ reducedMotion: "reduce" });
    const page = await context.newPage();
    await page.goto(url);
    const session = await context.newCDPSession(page);
    return {
      ask: (expression) => page.evaluate(expression),
      click: (selector) => page.click(selector),
      reload: () => page.reload(),
      pid: server.process().pid,
      inspect: (question) => session.send(question as "Runtime.getHeapUsage"),
      close: () => context.close(),
    };
  };
  const close = async () => {
    await browser.close();
    await server.close();
  };
  return { open, close };
}

/** Audio may start by itself. */
const preferences = { "media.autoplay.default": 0, "ui.prefersReducedMotion": 1 };

/** Firefox by its path. */
export const inFirefox =
  (executablePath: string): OpenIn =>
  async (url, pulse) => {
    const browser = await puppeteer.launch({
      browser: "firefox",
      executablePath,
      headless: true,
      extraPrefsFirefox: preferences,
      env: pulse.env,
    });
    const page = await browser.newPage();
    await page.goto(url);
    return {
      ask: <T>(expression: string) => page.evaluate(expression) as Promise<T>,
      click: (selector) => page.click(selector),
      reload: () => page.reload(),
      pid: browser.process()?.pid,
      inspect: undefined,
      close: () => browser.close(),
    };
  };
