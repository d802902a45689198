import puppeteer from "puppeteer-core";
import type { Open } from "./own-browser.ts";

/** Audio may start by itself; an input that beeps stands in for any the machine may have, and nobody is asked for it. */
const preferences = {
  "media.autoplay.default": 0,
  "media.autoplay.blocking_policy": 0,
  "media.navigator.permission.disabled": true,
  "media.navigator.streams.fake": true,
};

/** Firefox without a window, driven by WebDriver BiDi. */
export const firefox =
  (executablePath: string): Open =>
  async (env) => {
    const browser = await puppeteer.launch({
      browser: "firefox",
      executablePath,
      headless: true,
      extraPrefsFirefox: preferences,
      env,
    });
    const page = await browser.newPage();
    return {
      show: async (url) => void (await page.goto(url, { timeout: 0 })),
      close: () => browser.close(),
    };
  };
