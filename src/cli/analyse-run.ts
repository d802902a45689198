import { parseArgs } from "node:util";
import { type Analysed, type Analysis, analyseRecording } from "#recording/analyse.ts";
import { english } from "#recording/english.ts";
import { troubleText } from "#recording/words.ts";
import type { openSlices } from "./file-slices.ts";
import { measurementOf } from "./measurement-result.ts";
import { measurementText } from "./measurement-text.ts";
import type { Printed } from "./print.ts";
import { messageOf, printable } from "./problem.ts";

const usage = `Usage: npm run --silent analyse -- [options] recording.wav

Finds the test signal 'multitone' in a recording that was made elsewhere (WAV,
1 to 8 channels, of any length), and prints what came through what: levels,
crosstalk, polarity, delay, noise, as JSON (see public/measurement.schema.json).
The signal as a file: npm run --silent render -- multitone multitone.wav

  --text      the same for people
  --help      this

Ends with 0, or with 2 where the file cannot be read; then what was expected is
on the standard error, and nothing on the standard output.`;

const refused = (err: string): Printed => ({ code: 2, out: "", err: `${err}\n` });

/** The whole command, but for opening the file; `progress` hears how far it is, from 0 to 1. */
export async function analyseRun(
  args: readonly string[],
  open: typeof openSlices,
  progress: (share: number) => void = () => {},
): Promise<Printed> {
  const asking = askingOf(args);
  if ("code" in asking) return asking;
  const file = await open(asking.path);
  if ("missing" in file) return refused(printable(file.missing));
  try {
    const analysis = await ended(analyseRecording(file.slices), progress);
    if ("trouble" in analysis)
      return refused(printable(`${asking.path}: ${troubleText(english, analysis)}`));
    return { code: 0, out: printed(analysis, asking.text), err: "" };
  } finally {
    await file.close();
  }
}

interface Asking {
  readonly path: string;
  readonly text: boolean;
}

/** What was asked for, or what is printed instead. */
function askingOf(args: readonly string[]): Asking | Printed {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        text: { type: "boolean", default: false },
        help: { type: "boolean", default: false },
      },
    });
    if (values.help) return { code: 0, out: `${usage}\n`, err: "" };
    const [path, ...more] = positionals;
    if (path === undefined || more.length > 0) return refused(`Expected one recording.\n${usage}`);
    return { path, text: values.text };
  } catch (error) {
    return refused(`${messageOf(error)}\n${usage}`);
  }
}

async function ended(
  working: ReturnType<typeof analyseRecording>,
  progress: (share: number) => void,
): Promise<Analysis> {
  for (;;) {
    const { done, value } = await working.next();
    if (done) return value;
    progress(value);
  }
}

function printed(analysed: Analysed, text: boolean): string {
  const measurement = measurementOf(analysed);
  return text ? `${measurementText(measurement)}\n` : `${JSON.stringify(measurement, null, 2)}\n`;
}
