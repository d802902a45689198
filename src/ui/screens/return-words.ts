import type {
  Crosstalk,
  Estimate,
  Hum,
  Input,
  ReturnMeasurement,
} from "#core/measurement/return.ts";
import { decibels } from "./numbers.ts";
import type { ShownEntries, ShownEntry } from "./return-shown.ts";

const sides = ["left", "right"] as const;
const minus = (text: string): string => text.replace("-", "−");

/** Levels nearer than this are the same to anybody, decibels. */
const alike = 0.05;

/** What of each side comes back where it belongs. */
export const sideLines = (entries: ShownEntries): readonly string[] =>
  entries.map((row, input) => `${input === 0 ? "Left" : "Right"}: ${sideWords(row[input])}`);

function sideWords(entry: ShownEntry | undefined): string {
  if (entry === undefined || !entry.carried) return "does not come back.";
  return `${levelWords(entry.level)}, ${polarityWords(entry.polarity)}.`;
}

function levelWords(level: number): string {
  if (Math.abs(level) < alike) return "0.0 dB";
  return level < 0 ? `${decibels(-level)} down` : `${decibels(level)} up`;
}

const polarityWords = (polarity: 1 | -1 | undefined): string => {
  if (polarity === undefined) return "whether upside down cannot be told";
  return polarity === 1 ? "as sent" : "upside down";
};

/** What comes over from one side to the other, input by input. */
export const overLines = ({ inputs, entries }: ReturnMeasurement): readonly string[] =>
  inputs.flatMap(({ crosstalk }, input) => {
    if (crosstalk === undefined) return [];
    const row = entries[input] ?? [];
    const weaker = (row[0]?.level ?? 0) < (row[1]?.level ?? 0) ? 0 : 1;
    return [overWords(crosstalk, weaker, input, row[weaker]?.carried ?? false)];
  });

function overWords(
  { level, sign }: Crosstalk,
  weaker: 0 | 1,
  input: number,
  carried: boolean,
): string {
  const [from, under] = [sides[weaker], sides[weaker === 0 ? 1 : 0]];
  if (!carried)
    return `Nothing of the ${from} in input ${input + 1}, down to ${decibels(-level)} under the ${under}.`;
  const size =
    level > -alike ? `as loud as the ${under}` : `${decibels(-level)} under the ${under}`;
  return `The ${from} comes over into input ${input + 1}, ${size}${signWords(sign)}.`;
}

function signWords(sign: Crosstalk["sign"]): string {
  if (sign === undefined) return "";
  return sign === 1 ? ", the same way up" : ", upside down";
}

/** When the sides come, and how the clocks run. Where a recording made elsewhere begins says nothing of the way round. */
export function timeLines(
  { between, delay, drift }: ReturnMeasurement,
  isHere: boolean,
): readonly string[] {
  return [
    ...(between === undefined ? [] : [betweenWords(between)]),
    ...(isHere
      ? [
          `All round in ${(1000 * delay.value).toFixed(1)} ms from the beginning of the recording, which is the computer's doing for the most part.`,
        ]
      : []),
    `The clocks of output and input differ by ${Math.abs(drift.value) < 0.05 ? "less than 0.1" : minus(drift.value.toFixed(1))} parts in a million.`,
  ];
}

function betweenWords({ value, error }: Estimate): string {
  const micro = 1e6 * value;
  if (Math.abs(micro) < Math.max(0.5, 3e6 * error)) return "Both sides come at the same time.";
  return `The ${value > 0 ? "right" : "left"} comes ${Math.abs(micro).toFixed(1)} µs after the other side.`;
}

/** Noise, hum and distortion of each input. */
export const besideLines = ({ inputs }: ReturnMeasurement): readonly string[] =>
  inputs.flatMap((input, at) => [
    `Input ${at + 1}: ${noiseWords(input)}; ${humWords(input.hum)}${distortionWords(input)}.`,
  ]);

const noiseWords = ({ noise, signalToNoise }: Input): string =>
  `noise ${minus(noise.toFixed(0))} dBFS${signalToNoise > 0 ? `, ${decibels(signalToNoise)} under the signal` : ""}`;

function humWords(hum: Hum | undefined): string {
  if (hum === undefined) return "no hum stands out of it";
  const lines = hum.levels.flatMap((level, at) =>
    level === undefined ? [] : [{ level, n: at + 1 }],
  );
  const [worst] = lines.sort((a, b) => b.level - a.level);
  return worst === undefined
    ? "no hum stands out of it"
    : `hum of the mains (${hum.mains} Hz), most at ${hum.mains * worst.n} Hz: ${minus(worst.level.toFixed(0))} dBFS`;
}

function distortionWords({ distortion }: Input): string {
  if (distortion === undefined) return "";
  const part = ({ value, error }: Estimate): string => {
    const percent = 100 * Math.max(value, 0);
    const bound = Math.max(0.001, 300 * error);
    return percent < bound ? `under ${fine(bound)} %` : `${fine(percent)} %`;
  };
  return `; distortion of second order ${part(distortion.second)}, of third ${part(distortion.third)}`;
}

const fine = (percent: number): string => percent.toFixed(percent < 0.1 ? 3 : 1);
