import { parseArgs } from "node:util";
import { sheet } from "#core/report/sheet.ts";
import { type AnyName, everyName, everything } from "#core/signals/everything.ts";
import { english } from "#core/words/english.ts";
import { packed, signalFile } from "#pack/pack.ts";
import type { Printed } from "./print.ts";
import { messageOf } from "./problem.ts";

const usage = `Usage: npm run --silent render -- [options] NAME out.wav
       npm run --silent render -- [options] --pack out.zip
       npm run --silent render -- --list

Writes a test signal as a WAV file of two channels of 24 bits, or all of them
with a sheet as a ZIP file.

  --rate HZ   sampling rate, 48000 unless given
  --list      the names, what each is, and its level
  --help      this

An amplifier makes of a file whatever it likes: volume down first.`;

/** What the command prints, and what it would write where. */
interface Rendered extends Printed {
  readonly file?: { readonly path: string; readonly bytes: Uint8Array };
}

const refused = (err: string): Rendered => ({ code: 2, out: "", err: `${err}\n` });

/** The whole command, but for writing the file; `progress` hears how far a pack is, from 0 to 1. */
export function renderRun(
  args: readonly string[],
  progress: (share: number) => void = () => {},
): Rendered {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        rate: { type: "string", default: "48000" },
        list: { type: "boolean", default: false },
        pack: { type: "boolean", default: false },
        help: { type: "boolean", default: false },
      },
    });
    if (values.help) return { code: 0, out: `${usage}\n`, err: "" };
    if (values.list) return { code: 0, out: list(), err: "" };
    const rate = Number(values.rate);
    if (!Number.isInteger(rate))
      return refused(`--rate: expected whole hertz, found ${values.rate}`);
    return values.pack ? pack(positionals, rate, progress) : one(positionals, rate);
  } catch (error) {
    return refused(`${messageOf(error)}\n${usage}`);
  }
}

/** Every name with what it is and its level. */
const list = (): string =>
  everyName
    .map((name) => {
      const [level, peak] = [everything[name].level, everything[name].peak].map(
        english.sheet.level,
      );
      return `${name.padEnd(16)}${level?.padStart(10)}, peak ${peak?.padStart(10)}  ${english.signals[name].what}\n`;
    })
    .join("");

function one([name, path, ...more]: readonly string[], rate: number): Rendered {
  const known = everyName.find((each): each is AnyName => each === name);
  if (name === undefined || path === undefined || more.length > 0)
    return refused(`Expected a name and a file.\n${usage}`);
  if (known === undefined) return refused(`${name}: expected one of ${everyName.join(", ")}`);
  const { what } = english.signals[known];
  return {
    code: 0,
    out: `${path}: ${what}\n`,
    err: "",
    file: { path, bytes: signalFile(known, rate) },
  };
}

function pack(
  [path, ...more]: readonly string[],
  rate: number,
  progress: (share: number) => void,
): Rendered {
  if (path === undefined || more.length > 0) return refused(`Expected one file.\n${usage}`);
  const making = packed(rate, sheet(english, rate));
  for (;;) {
    const { done, value } = making.next();
    if (done)
      return {
        code: 0,
        out: `${path}: ${everyName.length} signals and a sheet\n`,
        err: "",
        file: { path, bytes: value },
      };
    progress(value);
  }
}
