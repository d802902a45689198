import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "vite";

/** The title of the version that is newer. */
export const newer = "the newer one";

/** A spoken word that the newer version has no more. */
export const goneWord = "prompts/de/take-them-off.wav";

/** Another version of the page, built for real into a folder of its own: with a title of its own, other names of its files, and a word less. */
export async function newerBuild(): Promise<string> {
  const outDir = await mkdtemp(join(tmpdir(), "newer-"));
  const { VITEST } = process.env;
  // The configuration builds the page only where nothing is tested.
  delete process.env.VITEST;
  try {
    await build({
      configFile: "vite.config.ts",
      logLevel: "error",
      build: { outDir },
      plugins: [
        {
          name: "newer",
          transformIndexHtml: (html) =>
            html.replace(/<title>.*<\/title>/, `<title>${newer}</title>`),
          transform: (code, id) =>
            /\/ui\/screens\/(frame|inside|measuring-screens)\.tsx$/.test(id)
              ? `${code}\nglobalThis.newer = true;`
              : undefined,
          // Before all that was built is listed.
          writeBundle: { order: "pre", handler: () => rm(join(outDir, goneWord)) },
        },
      ],
    });
  } finally {
    process.env.VITEST = VITEST;
  }
  return outDir;
}
