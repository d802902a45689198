/** The command: speaks every prompt anew into `public/prompts`, one folder a language, and removes what was there. */
import { mkdirSync, rmSync, writeFileSync } from "node:fs";
import { type SpokenTag, spokenTags } from "#core/prompts/speaking.ts";
import { type Printed, print } from "./print.ts";
import { printable } from "./problem.ts";
import { NotMade, promptFiles } from "./prompt-files.ts";

const folderOf = (language: SpokenTag): string => `public/prompts/${language}`;

function write(language: SpokenTag): string {
  const files = promptFiles(language);
  rmSync(folderOf(language), { recursive: true, force: true });
  mkdirSync(folderOf(language), { recursive: true });
  for (const [word, bytes] of files) writeFileSync(`${folderOf(language)}/${word}.wav`, bytes);
  const weight = files.reduce((sum, [, bytes]) => sum + bytes.length, 0);
  return `${folderOf(language)}: ${files.length} files, ${Math.ceil(weight / 1000)} kB\n`;
}

await print((): Printed => {
  try {
    return { code: 0, out: spokenTags.map(write).join(""), err: "" };
  } catch (error) {
    if (!(error instanceof NotMade)) throw error;
    return { code: 2, out: "", err: `${printable(error.message)}\n` };
  }
});
