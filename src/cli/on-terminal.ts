/** How far something is, from 0 to 1, in one line of a terminal; nothing where the standard error is none. */
export function onTerminal(share: number): void {
  if (process.stderr.isTTY)
    process.stderr.write(`\r${Math.round(100 * share)} %${share === 1 ? "\n" : ""}`);
}
