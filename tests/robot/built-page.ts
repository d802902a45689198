import { existsSync } from "node:fs";
import { type Browser, chromium as engine } from "playwright";
import { preview } from "vite";
import { chromium } from "#tests/support/chromium.ts";

/** The page as shipped, served from its build, and a browser to open it in. */
export interface BuiltPage {
  readonly url: string;
  readonly browser: Browser;
  readonly close: () => Promise<void>;
}

/** Serves `dist` at a port and starts a browser. Throws where nothing was built. */
export async function openBuiltPage(port = 4400): Promise<BuiltPage> {
  if (!existsSync("dist/index.html"))
    throw new Error("there is no dist: run `npx vite build` first");
  const server = await preview({
    configFile: false,
    root: "src",
    build: { outDir: "../dist" },
    preview: { host: "127.0.0.1", port },
    logLevel: "error",
  });
  const [url] = server.resolvedUrls?.local ?? [];
  if (url === undefined) throw new Error("the built page has no address");
  const browser = await engine.launch(await chromium());
  return {
    url,
    browser,
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}
