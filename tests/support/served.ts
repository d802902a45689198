import { existsSync } from "node:fs";
import { preview } from "vite";

/** The page as shipped, served from its build. */
export interface Served {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Serves `dist`. Throws where nothing was built. */
export async function serveBuilt(port: number): Promise<Served> {
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
  return { url, close: () => server.close() };
}
