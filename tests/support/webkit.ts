import { createServer } from "node:net";
import type { Open } from "./own-browser.ts";
import { type Started, started, waited } from "./programs.ts";

export interface WebKitPrograms {
  readonly driver: string;
  readonly browser: string;
}

/** Audio may start by itself, and inputs that beep stand in for any the machine may have: nobody is asked for those. */
const settings = [
  "--automation",
  "--autoplay-policy=allow",
  "--enable-media-stream=true",
  "--enable-mock-capture-devices=true",
];

/** WebKitGTK's small browser on a screen that nobody sees, driven by WebDriver. */
export const webkit =
  ({ driver, browser }: WebKitPrograms): Open =>
  async (env) => {
    const screen = await startScreen(env);
    const port = await freePort();
    const server = started(driver, [`--port=${port}`], {
      env: { ...env, DISPLAY: screen.display, GDK_BACKEND: "x11", NO_AT_BRIDGE: "1" },
      stdio: "ignore",
    });
    const stop = () => server.stop().finally(screen.stop);
    const at = `http://127.0.0.1:${port}`;
    try {
      await waited(driver, () => asked(`${at}/status`));
      const options = { binary: browser, args: settings };
      const capabilities = { alwaysMatch: { "webkitgtk:browserOptions": options } };
      const { sessionId } = (await asked(`${at}/session`, { capabilities })) as SessionMade;
      const session = `${at}/session/${sessionId}`;
      return {
        show: async (url) => void (await asked(`${session}/url`, { url })),
        close: () =>
          fetch(session, { method: "DELETE" })
            .then(() => undefined)
            .finally(stop),
      };
    } catch (error) {
      await stop();
      throw error;
    }
  };

interface SessionMade {
  readonly sessionId: string;
}

/** What the driver answers; throws what it says when it refuses. */
async function asked(url: string, body?: object): Promise<object | null> {
  const how = body && { method: "POST", body: JSON.stringify(body) };
  const answer = await fetch(url, how);
  const { value } = (await answer.json()) as { value: object | null };
  if (!answer.ok) throw new Error(`${url}: ${JSON.stringify(value)}`);
  return value;
}

/** A screen that nobody sees; it chooses its own number and tells it. */
async function startScreen(env: NodeJS.ProcessEnv): Promise<Started & { display: string }> {
  const args = ["-displayfd", "3", "-screen", "0", "1024x768x24", "-nolisten", "tcp"];
  const screen = started("Xvfb", args, { env, stdio: ["ignore", "ignore", "ignore", "pipe"] });
  let told = "";
  screen.child.stdio[3]?.on("data", (some) => {
    told += some;
  });
  const number = await waited("Xvfb", async () => /^(\d+)\n/.exec(told)?.[1]);
  return { ...screen, display: `:${number}` };
}

const freePort = (): Promise<number> =>
  new Promise((resolve, reject) => {
    const server = createServer().once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const address = server.address();
      const port = typeof address === "object" ? address?.port : undefined;
      server.close(() => (port ? resolve(port) : reject(new Error("there is no free port"))));
    });
  });
