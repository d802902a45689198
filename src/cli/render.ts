/** The command: writes a test signal as a file, or all of them. */
import { writeFileSync } from "node:fs";
import { onTerminal } from "./on-terminal.ts";
import { print } from "./print.ts";
import { messageOf, printable } from "./problem.ts";
import { renderRun } from "./render-run.ts";

await print(() => {
  const { file, ...printed } = renderRun(process.argv.slice(2), onTerminal);
  try {
    if (file !== undefined) writeFileSync(file.path, file.bytes);
    return printed;
  } catch (error) {
    return { code: 2, out: "", err: `${file?.path}: ${printable(messageOf(error))}\n` };
  }
});
