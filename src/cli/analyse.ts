/** The command: measures our signal in a recording. */
import { analyseRun } from "./analyse-run.ts";
import { openSlices } from "./file-slices.ts";
import { onTerminal } from "./on-terminal.ts";
import { print } from "./print.ts";

await print(() => analyseRun(process.argv.slice(2), openSlices, onTerminal));
