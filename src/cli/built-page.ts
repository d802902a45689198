import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

const hashOf = (text: string | Uint8Array, as: "hex" | "base64"): string =>
  createHash("sha256").update(text).digest(as);

/** What the built page may load and reach: itself. Left out while developing, where Vite adds styles and a socket. */
export const policy: Plugin = {
  name: "content-security-policy",
  apply: "build",
  transformIndexHtml: {
    order: "post",
    handler: (html) => [
      {
        tag: "meta",
        injectTo: "head-prepend",
        attrs: { "http-equiv": "Content-Security-Policy", content: allowed(html) },
      },
    ],
  },
};

/** The page's own script that stands in it, which sets the theme before anything is drawn, is let in by its hash; no other one. */
function allowed(html: string): string {
  const within = [...html.matchAll(/<script>([\s\S]*?)<\/script>/g)].map(
    ([, text = ""]) => `'sha256-${hashOf(text, "base64")}'`,
  );
  return [
    "default-src 'none'",
    ["script-src 'self'", ...within].join(" "),
    "style-src 'self'",
    "img-src 'self' data:",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "manifest-src 'self'",
    "worker-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/** What cannot stand in the page itself: a server that serves it should send these too. */
export const headers = {
  "Content-Security-Policy": "frame-ancestors 'none'",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Permissions-Policy": "camera=(), geolocation=(), microphone=(self)",
  "Referrer-Policy": "no-referrer",
  "X-Content-Type-Options": "nosniff",
};

const worker = "service-worker.js";
/** Of what is built, what nobody needs in flight mode. */
const elsewhere = /(\.schema|^example-case)\.json$/;

/** The service worker at the root of what is built, with the list of all files and their hashes in front of it. */
export const ownCopy: Plugin = {
  name: "own-copy",
  apply: "build",
  buildStart() {
    this.emitFile({
      type: "chunk",
      id: join(import.meta.dirname, "../offline/service-worker.ts"),
      fileName: worker,
    });
  },
  // After everything else, so that it lists what really lies there.
  writeBundle: {
    order: "post",
    sequential: true,
    handler({ dir = "dist" }) {
      const text = readFileSync(join(dir, worker), "utf8");
      if (/^\s*(import|export)\b/m.test(text)) throw new Error(`${worker} must stand alone`);
      const built = readdirSync(dir, { recursive: true, withFileTypes: true })
        .filter((file) => file.isFile())
        .map(({ parentPath, name }) => join(parentPath, name).slice(join(dir, "/").length))
        .map((path) => path.replaceAll("\\", "/"))
        .filter((path) => path !== worker && !elsewhere.test(path))
        .sort()
        .map((path) => [
          path === "index.html" ? "" : path,
          hashOf(readFileSync(join(dir, path)), "hex").slice(0, 16),
        ]);
      const version = hashOf(JSON.stringify(built), "hex").slice(0, 16);
      const lines = [`const built=${JSON.stringify(built)}`, `const version="${version}"`, text];
      writeFileSync(join(dir, worker), lines.join(";\n"));
    },
  },
};
