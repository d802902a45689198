import { defineBrowserProvider } from "@vitest/browser";
import type { BrowserModuleMocker, BrowserProvider } from "vitest/node";
import { startPulse } from "./pulse.ts";

/** A browser that was started, and shows one page. */
export interface OpenBrowser {
  readonly show: (url: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Starts a browser in an environment in which it finds an output. */
export type Open = (env: NodeJS.ProcessEnv) => Promise<OpenBrowser>;

const speaker = { name: "speaker", channels: 2, rate: 48_000, format: "float32le" };

/** Test files in a browser that playwright does not drive: one page, one file after the other, no mocked modules. */
export const ownBrowser = (name: string, open: Open) =>
  defineBrowserProvider({
    name,
    supportedBrowser: [name],
    providerFactory: (): BrowserProvider => {
      let opened: Promise<OpenBrowser> | undefined;
      return {
        name,
        // Beside the other browsers; the files of this one stay in a row by `fileParallelism`.
        supportsParallelism: true,
        mocker,
        getCommandsContext: () => ({}),
        openPage: async (_session, url) => {
          if (opened) return (await opened).show(url);
          opened = shown(open, url);
          await opened;
        },
        close: async () => (await opened)?.close(),
      };
    },
  });

/** A browser may hang as it starts: it is given up after this time and started again; milliseconds. */
const patience = 45_000;
const tries = 3;

/** A browser that shows the page. */
async function shown(open: Open, url: string): Promise<OpenBrowser> {
  for (let tried = 1; ; tried += 1) {
    const starting = withSpeaker(open).then(async (browser) => {
      await browser.show(url);
      return browser;
    });
    const late = new Promise<undefined>((resolve) =>
      setTimeout(resolve, patience, undefined).unref(),
    );
    const browser = await Promise.race([starting, late]);
    if (browser !== undefined) return browser;
    // Whenever it comes after all, it goes again.
    starting.then(({ close }) => close()).catch(() => undefined);
    if (tried === tries)
      throw new Error(`no browser showed a page in ${(tries * patience) / 1000} s`);
  }
}

async function withSpeaker(open: Open): Promise<OpenBrowser> {
  const pulse = await startPulse({ sinks: [speaker] });
  try {
    const { show, close } = await open(pulse.env);
    return { show, close: () => close().finally(pulse.stop) };
  } catch (error) {
    await pulse.stop();
    throw error;
  }
}

/** Without one, a provider's pages wait for those of all others. */
const mocker: BrowserModuleMocker = {
  register: () => Promise.reject(new Error("modules are not mocked in this browser")),
  delete: () => Promise.resolve(),
  clear: () => Promise.resolve(),
};
