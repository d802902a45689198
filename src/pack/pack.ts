import { strToU8, zipSync } from "fflate";
import { fileName } from "#core/report/sheet.ts";
import { everyName, everything } from "#core/signals/everything.ts";
import { renderSignal } from "#core/signals/render.ts";
import type { Hertz } from "#core/units/units.ts";
import { wavOf } from "./wav.ts";

/** The same each time: orders of a pair are those of this seed. */
const seed = 1;

/** One signal as a file. */
export const signalFile = (name: (typeof everyName)[number], rate: Hertz): Uint8Array =>
  wavOf(renderSignal(everything[name], rate, seed), everything[name].loop?.(rate));

/** Every signal as a file, and a sheet, in one ZIP. Says how far it is after each: from 0 to 1. */
export function* packed(rate: Hertz, sheet: string): Generator<number, Uint8Array, void> {
  const files: Record<string, Uint8Array> = { "sheet.txt": strToU8(sheet) };
  for (const [at, name] of everyName.entries()) {
    files[fileName(name)] = signalFile(name, rate);
    yield (at + 1) / everyName.length;
  }
  return zipSync(files, { level: 6, mtime: "1980-01-01T00:00:00" });
}
