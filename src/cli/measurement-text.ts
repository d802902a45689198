import type {
  EntryResult,
  InputResult,
  MeasuredResult,
  Measurement,
  PlayingResult,
} from "./measurement-format.ts";
import { printable } from "./problem.ts";

/** So many places; what rounds to nothing has no sign. */
const fixed = (value: number, digits: number): string =>
  value
    .toFixed(digits)
    .replace(/^-(?=[0.]*$)/, "")
    .replace("-", "−");
const decibels = (value: number | undefined, unit = "dB"): string =>
  value === undefined ? "none" : `${fixed(value, 2)} ${unit}`;
const plusMinus = (value: number, error: number, digits: number, unit: string): string =>
  `${fixed(value, digits)} ± ${fixed(error, digits)} ${unit}`;

/** A measurement for people: the same as its JSON says, but for the single tones. */
export const measurementText = ({ file, warnings, playings, words }: Measurement): string =>
  [
    `${file.coding} bits, ${file.channels} ${file.channels === 1 ? "channel" : "channels"}, ${file.rate} Hz, ${(file.frames / file.rate).toFixed(2)} s`,
    ...warnings.map((one) => `Warning: ${one.words}`),
    words,
    ...playings.flatMap((one) => ["", ...playingLines(one)]),
  ]
    .map(printable)
    .join("\n");

const playingLines = (playing: PlayingResult): readonly string[] => [
  `From ${playing.from.toFixed(2)} s to ${playing.to.toFixed(2)} s, ${channelsText(playing.channels)}:`,
  ...(playing.result === "refused" ? [`  ${playing.words}`] : measuredLines(playing)),
];

const channelsText = (channels: readonly number[]): string =>
  channels.length === 1 ? `channel ${channels[0]}` : `channels ${channels.join(" and ")}`;

const measuredLines = ({
  from,
  stretches,
  inputs,
  delay,
  between,
  drift,
}: MeasuredResult): readonly string[] => [
  ...(stretches === "both"
    ? []
    : [`  Only the ${stretches} of its two stretches is there from end to end.`]),
  ...inputs.flatMap(inputLines),
  `  The signal begins at ${plusMinus(from + delay.value, delay.error, 6, "s")}`,
  ...(between === undefined
    ? []
    : [
        `  Right later than left by ${plusMinus(1e6 * between.value, 1e6 * between.error, 1, "µs")}`,
      ]),
  `  Clocks apart: ${plusMinus(drift.value, drift.error, 2, "parts of a million")}`,
];

const inputLines = ({
  channel,
  left,
  right,
  noise,
  signalToNoise,
  crosstalk,
  hum,
  distortion,
}: InputResult): readonly string[] => [
  `  Channel ${channel}`,
  `    left programme: ${entryText(left)}`,
  `    right programme: ${entryText(right)}`,
  ...(crosstalk === undefined
    ? []
    : [`    crosstalk: ${decibels(crosstalk.level)}${signText(crosstalk.sign)}`]),
  `    noise: ${decibels(noise, "dBFS")}${signalToNoise === undefined ? "" : `; the tones ${decibels(signalToNoise)} over it`}`,
  ...(hum === undefined
    ? []
    : [`    hum of mains at ${fixed(hum.frequency, 2)} Hz: ${humText(hum)}`]),
  ...(distortion === undefined
    ? []
    : [
        `    distortion: second order ${percent(distortion.second)}, third ${percent(distortion.third)}`,
      ]),
];

function entryText({ level, error, carried, polarity }: EntryResult): string {
  if (!carried) return level === undefined ? "not heard" : `not heard (${decibels(level)})`;
  const size =
    level === undefined || error === undefined ? decibels(level) : plusMinus(level, error, 2, "dB");
  if (polarity === undefined) return `${size}, polarity not to be told`;
  return `${size}, ${polarity === 1 ? "as sent" : "upside down"}`;
}

function signText(sign: 1 | -1 | undefined): string {
  if (sign === undefined) return "";
  return sign === 1 ? ", in phase" : ", upside down";
}

/** The lines that stand out. */
const humText = ({ mains, levels }: NonNullable<InputResult["hum"]>): string =>
  levels
    .flatMap((one, at) => (one === null ? [] : [`${mains * (at + 1)} Hz ${decibels(one, "dBFS")}`]))
    .join(", ");

const percent = ({ value, error }: { readonly value: number; readonly error: number }): string =>
  plusMinus(100 * value, 100 * error, 3, "%");
