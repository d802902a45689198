import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { speaking, spokenTags } from "#core/prompts/speaking.ts";

describe("the command that makes the prompts", () => {
  const folder = mkdtempSync(join(tmpdir(), "nothing-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const command = (path: string) =>
    spawnSync(process.execPath, ["--import", "tsx", "src/cli/make-prompts.ts"], {
      env: { ...process.env, PATH: path },
      encoding: "utf8",
    });

  test("says which program is missing, ends with 2, and leaves the files alone", () => {
    const { status, stdout, stderr } = command(folder);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toMatch(/^espeak-ng is not installed; .*\n$/);
    for (const tag of spokenTags)
      expect(readdirSync(`public/prompts/${tag}`)).toHaveLength(speaking[tag].words.length);
  });

  test("says what a program failed with", () => {
    writeFileSync(join(folder, "espeak-ng"), "#!/bin/sh\necho no such voice >&2\nexit 1\n", {
      mode: 0o755,
    });
    const { status, stderr } = command(folder);
    expect([status, stderr]).toEqual([2, "espeak-ng: no such voice\n"]);
    for (const tag of spokenTags)
      expect(readdirSync(`public/prompts/${tag}`)).toHaveLength(speaking[tag].words.length);
  });
});
