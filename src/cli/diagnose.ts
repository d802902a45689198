/** The command: reads a case, prints what is suspected, what to do next, and why. */
import { messageOf, printable } from "./problem.ts";
import { readInput } from "./read-input.ts";
import { type Ran, run } from "./run.ts";

// Whoever reads may stop reading, as `head` does: that is no fault.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });

/** A mistake of ours is said in a line as well. */
const failed = (error: unknown): Ran => ({
  code: 2,
  out: "",
  err: `this program failed: ${printable(messageOf(error))}\n`,
});

const { code, out, err } = await run(process.argv.slice(2), readInput).catch(failed);
process.stderr.write(err);
process.stdout.write(out);
process.exitCode = code;
