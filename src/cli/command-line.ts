import { parseArgs } from "node:util";

/** What was asked for on the command line. */
export interface Asking {
  /** A path, or '-' for what comes in by the standard input. */
  readonly file: string;
  readonly position: string | undefined;
  readonly as: "JSON" | "text" | "echo";
}

/** How the command is called. */
export const usage = `Usage: npm run --silent diagnose -- [options] case.json

Reads a case (a rig and a log, see public/case.schema.json; '-' is the standard
input) and prints what is suspected, what to do next, and why, as JSON (see
public/diagnosis.schema.json).

  --position ID   only this position
  --text          the same for people
  --echo          only the case as it was read, unknown keys included
  --help          this

Ends with 0, or with 2 where the case cannot be read; then what was expected is
on the standard error, and nothing on the standard output.`;

/** Reads the command line: what was asked for, or 'help', or what is wrong with it. */
export function askingOf(args: readonly string[]): Asking | "help" | { readonly wrong: string } {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        position: { type: "string" },
        text: { type: "boolean", default: false },
        echo: { type: "boolean", default: false },
        help: { type: "boolean", default: false },
      },
    });
    return values.help ? "help" : wholeOf(values, positionals);
  } catch (error) {
    return { wrong: error instanceof Error ? error.message : String(error) };
  }
}

function wholeOf(
  { position, text, echo }: { position?: string; text: boolean; echo: boolean },
  [file, ...more]: readonly string[],
): Asking | { readonly wrong: string } {
  if (file === undefined || more.length > 0) return { wrong: "Expected one case file." };
  if (text && echo) return { wrong: "Expected --text or --echo, not both." };
  const printed = echo ? "echo" : "JSON";
  return { file, position, as: text ? "text" : printed };
}
