import { type Browser, chromium as engine } from "playwright";
import { chromium } from "#tests/support/chromium.ts";
import { serveBuilt } from "#tests/support/served.ts";

/** The page as shipped, served from its build, and a browser to open it in. */
export interface BuiltPage {
  readonly url: string;
  readonly browser: Browser;
  readonly close: () => Promise<void>;
}

/** Serves `dist` at a port and starts a browser. Throws where nothing was built. */
export async function openBuiltPage(port = 4400): Promise<BuiltPage> {
  const { url, close } = await serveBuilt(port);
  const browser = await engine.launch(await chromium());
  return {
    url,
    browser,
    close: async () => {
      await browser.close();
      await close();
    },
  };
}
