import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type CDPSession, chromium as engine, type Page } from "playwright";
import { chromium } from "#tests/support/chromium.ts";
import { type Started, started, waited } from "#tests/support/programs.ts";

/** A browser with a profile that outlives it: it is ended from outside, without a word, and started again. */
export class KilledBrowser {
  readonly #profile: string;
  #running: Running | undefined;

  private constructor(profile: string) {
    this.#profile = profile;
  }

  static async start(): Promise<KilledBrowser> {
    return new KilledBrowser(await mkdtemp(join(tmpdir(), "leftwright-kept-")));
  }

  /** A page of its own process, in the browser that runs, or in one that is started for it. */
  async page(): Promise<Page> {
    this.#running ??= await run(this.#profile);
    const [context] = this.#running.browser.contexts();
    if (context === undefined) throw new Error("the browser has no window");
    // The process that stood ready for the next page may have been killed with the last one.
    return context.newPage().catch(() => context.newPage());
  }

  /** The processes that show pages now, to be ended at a moment without asking for them first. */
  async pages(): Promise<readonly number[]> {
    if (this.#running === undefined) return [];
    const { processInfo } = await this.#running.inside.send("SystemInfo.getProcessInfo");
    return processInfo.filter(({ type }) => type === "renderer").map(({ id }) => id);
  }

  /** Ends the whole browser, as a battery that is empty. */
  async killAll(): Promise<void> {
    const running = this.#running;
    this.#running = undefined;
    if (running === undefined) return;
    kill(running.pid);
    await running.program.stop();
  }

  async close(): Promise<void> {
    const running = this.#running;
    this.#running = undefined;
    await running?.browser.close().catch(() => undefined);
    await running?.program.stop();
    await rm(this.#profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 100 });
  }
}

/** Ends a process at once; one that has gone already is as good. */
export function kill(id: number): void {
  try {
    process.kill(id, "SIGKILL");
  } catch {
    // It went by itself.
  }
}

interface Running {
  readonly program: Started;
  readonly browser: Browser;
  readonly inside: CDPSession;
  readonly pid: number;
}

async function run(profile: string): Promise<Running> {
  const { executablePath = "", args = [], env } = await chromium();
  const port = join(profile, "DevToolsActivePort");
  await rm(port, { force: true });
  const more = [
    "--headless",
    "--remote-debugging-port=0",
    `--user-data-dir=${profile}`,
    ...["--mute-audio", "--force-prefers-reduced-motion", "--window-size=600,500"],
    ...[
      "--disable-gpu",
      "--disable-extensions",
      "--no-default-browser-check",
      "--disable-breakpad",
    ],
    "--disable-features=SpareRendererForSitePerProcess",
  ];
  const program = started(executablePath, [...args, ...more, "about:blank"], {
    env: { ...process.env, ...env },
    stdio: "ignore",
  });
  try {
    // On a busy machine the file is there before anything is written in it.
    const told = await waited("the browser", async () => {
      const text = await readFile(port, "utf8");
      return text.includes("\n") ? text : undefined;
    });
    const browser = await engine.connectOverCDP(`http://127.0.0.1:${told.split("\n")[0]}`);
    const inside = await browser.newBrowserCDPSession();
    const { processInfo } = await inside.send("SystemInfo.getProcessInfo");
    const pid = processInfo.find(({ type }) => type === "browser")?.id;
    if (pid === undefined) throw new Error("the browser has no process");
    return { program, browser, inside, pid };
  } catch (error) {
    await program.stop();
    throw error;
  }
}
