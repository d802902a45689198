import { catalogue } from "#core/parts/catalogue.ts";
import type { Case, Compared } from "./simulated.ts";

const columns = [8, 10, 9, 12, 14] as const;

const line = (first: string, ...rest: readonly (string | number)[]): string =>
  `  ${first.padEnd(46)}${rest.map((one, at) => String(one).padStart(columns[at] ?? 0)).join("")}`;

function row(title: string, own: readonly Compared[]): string {
  const circuits = new Set(own.map(({ block }) => JSON.stringify(block))).size;
  const entries = own.reduce((sum, one) => sum + one.entries, 0);
  const off = Math.max(...own.map((one) => one.off)).toExponential(1);
  const share = `${(100 * Math.max(...own.map((one) => one.share))).toPrecision(2)} %`;
  return line(title, own.length, circuits, entries, off, share);
}

/**
 * What came of comparing, by the kind of part whose fault it was: how many cases, how many different circuits among them, how many entries
 * at all frequencies, the largest difference in volts for one volt of the source, and that in shares of what is allowed.
 */
export function table(title: string, compared: readonly Compared[]): string {
  const kinds: readonly Case["of"][] = ["no fault", ...(Object.keys(catalogue) as Case["of"][])];
  const rows = kinds.flatMap((kind) => {
    const own = compared.filter(({ of }) => of === kind);
    return own.length === 0 ? [] : [row(kind, own)];
  });
  return [
    `ngspice against the core: ${title}`,
    line("fault of", "cases", "circuits", "entries", "largest, V", "of allowed"),
    ...rows,
    row("all", compared),
  ].join("\n");
}

/** What is off by more than it may be, in words. */
export const beyond = (compared: readonly Compared[]): readonly string[] =>
  compared
    .filter(({ share }) => !(share <= 1))
    .map(({ name, off }) => `${name} is off by ${off} V`);
