import { messageOf, printable } from "./problem.ts";

/** What a command prints, and how it ends. */
export interface Printed {
  readonly code: 0 | 2;
  readonly out: string;
  readonly err: string;
}

/** Prints what a command came to; a mistake of ours is said in a line as well. Whoever reads may stop reading, as `head` does. */
export async function print(command: () => Printed | Promise<Printed>): Promise<void> {
  for (const stream of [process.stdout, process.stderr])
    stream.on("error", (error: NodeJS.ErrnoException) => {
      if (error.code !== "EPIPE") throw error;
    });
  const { code, out, err } = await failing(command);
  process.stderr.write(err);
  process.stdout.write(out);
  process.exitCode = code;
}

async function failing(command: () => Printed | Promise<Printed>): Promise<Printed> {
  try {
    return await command();
  } catch (error) {
    return { code: 2, out: "", err: `this program failed: ${printable(messageOf(error))}\n` };
  }
}
