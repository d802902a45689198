import type { BrowserProviderOption } from "vitest/node";
import { firefox } from "./firefox.ts";
import { ownBrowser } from "./own-browser.ts";
import { onPath, runs } from "./programs.ts";
import { webkit } from "./webkit.ts";

interface Engine {
  readonly browser: "firefox" | "webkit";
  readonly provider: BrowserProviderOption;
}

/** Where Debian puts the small browser that comes with the driver. */
const smallBrowser = "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser";

/** The engines beside Chromium that are installed with what they need; says which are not. */
export function otherEngines(): Engine[] {
  const fox = onPath("pulseaudio") && onPath("firefox-esr", "firefox");
  const screen = onPath("pulseaudio") && onPath("Xvfb");
  const driver = screen && runs(smallBrowser) ? onPath("WebKitWebDriver") : undefined;
  const found: Engine[] = [];
  if (fox) found.push({ browser: "firefox", provider: ownBrowser("firefox", firefox(fox)) });
  else leftOut("Firefox", "firefox-esr or pulseaudio");
  const programs = driver && { driver, browser: smallBrowser };
  if (programs) found.push({ browser: "webkit", provider: ownBrowser("webkit", webkit(programs)) });
  else leftOut("WebKit", "webkit2gtk-driver, xvfb or pulseaudio");
  return found;
}

/** Said once: the configuration is read anew for every project, in one process. */
function leftOut(engine: string, missing: string): void {
  const told = `TOLD_${engine}`;
  if (process.env[told] === undefined)
    console.log(`${engine} is left out: ${missing} is not installed`);
  process.env[told] = "yes";
}
