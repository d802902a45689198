/** The command: writes a test signal as a file, or all of them. */
import { writeFileSync } from "node:fs";
import { print } from "./print.ts";
import { messageOf, printable } from "./problem.ts";
import { renderRun } from "./render-run.ts";

/** On a terminal, how far a pack is. */
const progress = (share: number): void => {
  if (process.stderr.isTTY)
    process.stderr.write(`\r${Math.round(100 * share)} %${share === 1 ? "\n" : ""}`);
};

await print(() => {
  const { file, ...printed } = renderRun(process.argv.slice(2), progress);
  try {
    if (file !== undefined) writeFileSync(file.path, file.bytes);
    return printed;
  } catch (error) {
    return { code: 2, out: "", err: `${file?.path}: ${printable(messageOf(error))}\n` };
  }
});
