/** The command: reads a case, prints what is suspected, what to do next, and why. */
import { print } from "./print.ts";
import { readInput } from "./read-input.ts";
import { run } from "./run.ts";

await print(() => run(process.argv.slice(2), readInput));
