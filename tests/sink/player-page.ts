import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build, preview } from "vite";

export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Builds the page with the player behind three buttons, as the program itself is built, and serves it. */
export async function servePlayer(): Promise<Served> {
  const root = import.meta.dirname;
  const outDir = await mkdtemp(join(tmpdir(), "player-page-"));
  await build({
    configFile: false,
    root,
    logLevel: "error",
    build: { outDir, emptyOutDir: true, rolldownOptions: { input: join(root, "page.html") } },
  });
  const server = await preview({
    configFile: false,
    root,
    build: { outDir },
    preview: { host: "127.0.0.1", port: 4410 },
    logLevel: "error",
  });
  const [url] = server.resolvedUrls?.local ?? [];
  if (url === undefined) throw new Error("the player's page has no address");
  const close = async () => {
    await server.close();
    await rm(outDir, { recursive: true, force: true });
  };
  return { url: `${url}page.html`, close };
}
