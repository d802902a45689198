/** The command: writes a test signal as a file, or all of them. */
import { writeFileSync } from "node:fs";
import { messageOf, printable } from "./problem.ts";
import { renderRun } from "./render-run.ts";

const { code, out, err, file } = renderRun(process.argv.slice(2), (share) => {
  if (process.stderr.isTTY) process.stderr.write(`\r${Math.round(100 * share)} %`);
});
process.exitCode = code;
process.stderr.write(err);
try {
  if (file !== undefined) writeFileSync(file.path, file.bytes);
  process.stdout.write(out);
} catch (error) {
  process.stderr.write(`${file?.path}: ${printable(messageOf(error))}\n`);
  process.exitCode = 2;
}
