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

/** The engines beside Chromium that are installed, with what they need; says which are not. */
export function otherEngines(): Engine[] {
  const sound = onPath("pulseaudio") !== undefined;
  const fox = sound ? onPath("firefox-esr", "firefox") : undefined;
  const driver =
    sound && onPath("Xvfb") && runs(smallBrowser) ? onPath("WebKitWebDriver") : undefined;
  if (!fox) console.log("Firefox is left out: firefox-esr or pulseaudio is not installed");
  if (!driver)
    console.log("WebKit is left out: webkit2gtk-driver, xvfb or pulseaudio is not installed");
  return [
    ...(fox
      ? [{ browser: "firefox" as const, provider: ownBrowser("firefox", firefox(fox)) }]
      : []),
    ...(driver
      ? [
          {
            browser: "webkit" as const,
            provider: ownBrowser("webkit", webkit({ driver, browser: smallBrowser })),
          },
        ]
      : []),
  ];
}
