import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const kinds: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".js": "text/javascript",
  ".css": "text/css",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".wav": "audio/wav",
  ".webmanifest": "application/manifest+json",
};

/** A plain server of files in a subfolder, as many places have one, which can be switched off like a network. */
export interface FileServer {
  readonly url: string;
  /** Every path that was asked for. */
  readonly asked: string[];
  /** Serves another folder from now on. */
  readonly serve: (folder: string) => void;
  /** From now on these paths are refused. */
  readonly refuse: (path: RegExp | undefined) => void;
  readonly stop: () => Promise<void>;
}

export async function serveFiles(first: string): Promise<FileServer> {
  let folder = first;
  let refused: RegExp | undefined;
  const asked: string[] = [];
  const server = createServer(({ url = "" }, answer) => {
    const path = new URL(url, "http://here").pathname;
    asked.push(path);
    try {
      if (!path.startsWith("/tools/leftwright/") || refused?.test(path))
        throw new Error("not here");
      const name = path.slice("/tools/leftwright/".length) || "index.html";
      const body = readFileSync(join(folder, name));
      answer.writeHead(200, { "content-type": kinds[extname(name)] ?? "text/plain" });
      answer.end(body);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}/tools/leftwright/`,
    asked,
    serve: (next) => {
      folder = next;
    },
    refuse: (path) => {
      refused = path;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
