import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, preview } from "vite";

export interface Served {
  readonly url: string;
  /** Of the page that measures. */
  readonly measuring: string;
  readonly close: () => Promise<void>;
}

/** Builds the page with the player behind three buttons and the one with the measurer, as the program itself is built, and serves them. */
export async function servePlayer(): Promise<Served> {
  const root = import.meta.dirname;
  // The program's own, so that its policy holds here too.
  const configFile = join(root, "../../vite.config.ts");
  const input = ["page.html", "return-page.html"].map((name) => join(root, name));
  const outDir = await mkdtemp(join(tmpdir(), "player-page-"));
  await build({
    configFile,
    root,
    publicDir: false,
    logLevel: "error",
    build: { outDir, emptyOutDir: true, rolldownOptions: { input } },
  });
  const server = await preview({
    configFile: false,
    root,
    build: { outDir },
    preview: { host: "127.0.0.1", port: 4410, strictPort: false },
    logLevel: "error",
  });
  const [url] = server.resolvedUrls?.local ?? [];
  if (url === undefined) throw new Error("the player's page has no address");
  const close = async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
  return { url: `${url}page.html`, measuring: `${url}return-page.html`, close };
}
