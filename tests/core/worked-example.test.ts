import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

/** The example in DEVELOPERS.md, written to a file of its own and run. */
test("the worked example says what it says it says", async () => {
  const text = readFileSync("DEVELOPERS.md", "utf8");
  const code = text.match(/<!-- example -->\n```ts\n([\s\S]*?)```/)?.[1];
  if (code === undefined) throw new Error("DEVELOPERS.md has no example");
  const folder = mkdtempSync(join("tests", "example-"));
  try {
    writeFileSync(join(folder, "example.ts"), code);
    const { verdict } = await import(/* @vite-ignore */ join(process.cwd(), folder, "example.ts"));
    const promised = code.trim().split("\n").at(-1)?.replace("// ", "");
    expect(verdict).toBe(promised);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
