import { balance } from "./balance.ts";
import type { EarCheck } from "./check.ts";
import { cup } from "./cup.ts";
import { left, right } from "./idents.ts";
import { pair } from "./pair.ts";
import { silence } from "./silence.ts";

/** Every check by ear, written by hand: one file and one line add one. */
export const catalogue: readonly EarCheck[] = [left, right, pair, cup, silence, balance];

/** The check by ear of a name. Throws on a name the catalogue lacks. */
export function earCheck(name: string): EarCheck {
  const check = catalogue.find((one) => one.name === name);
  if (check === undefined) throw new Error(`there is no check named ${name}`);
  return check;
}
