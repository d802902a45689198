import type { Entry, Estimate, Gain, Input, ReturnMeasurement } from "#core/measurement/return.ts";
import type { Decibels } from "#core/units/units.ts";
import { english } from "#core/words/english.ts";
import { refusalText } from "#core/words/refusal-text.ts";
import type { Analysed, Playing } from "#recording/analyse.ts";
import { english as recording } from "#recording/english.ts";
import {
  type EntryResult,
  type InputResult,
  type MeasuredResult,
  type Measurement,
  measurementFormatName,
  measurementVersion,
  type PlayingResult,
} from "./measurement-format.ts";

/** A key with its value, or neither: where there is no value, and no number that JSON has. */
const given = <Name extends string, Value>(
  name: Name,
  value: Value | undefined,
): { readonly [Key in Name]?: Value } =>
  value === undefined || (typeof value === "number" && !Number.isFinite(value))
    ? {}
    : ({ [name]: value } as { readonly [Key in Name]: Value });

/** A level below this is nothing at all, as of a channel of zeros. */
const least: Decibels = -250;
const some = (level: Decibels): Decibels | undefined => (level > least ? level : undefined);

/** What was made of a recording, as the published format has it. */
export const measurementOf = ({ file, odd, found, playings }: Analysed): Measurement => ({
  format: measurementFormatName,
  version: measurementVersion,
  file: {
    container: file.container,
    coding: file.coding,
    channels: file.channels,
    rate: file.rate,
    frames: file.frames,
  },
  warnings: odd.map((one) => ({ odd: one, words: recording.odd[one] })),
  found,
  playings: playings.map(playingResult),
  words: recording.found(found, playings.length),
});

function playingResult({ from, to, channels, measured }: Playing): PlayingResult {
  const place = { from, to, channels: [...channels] };
  if (!("refused" in measured))
    return { result: "measured", ...place, ...measuredResult(channels, measured) };
  return {
    result: "refused",
    ...place,
    refused: measured.refused,
    ...given("measured", measured.measured),
    ...given("bound", measured.bound),
    words: refusalText(english, measured),
  };
}

const measuredResult = (
  channels: readonly number[],
  { stretches, inputs, entries, delay, between, drift, responses }: ReturnMeasurement,
): Omit<MeasuredResult, "result" | "from" | "to" | "channels"> => ({
  stretches,
  inputs: inputs.map((one, at) => inputResult(channels[at] ?? at + 1, one, entries[at] ?? [])),
  delay: estimated(delay),
  ...given("between", between),
  drift: estimated(drift),
  responses: responses.map(({ frequency, gains }) => ({
    frequency,
    inputs: gains.map(([left, right]) => ({
      ...given("left", left && gainResult(left)),
      ...given("right", right && gainResult(right)),
    })),
  })),
});

const estimated = ({ value, error }: Estimate) => ({ value, error });
const gainResult = ({ re, im, error }: Gain) => ({ re, im, error });

const nothing: Entry = {
  level: Number.NEGATIVE_INFINITY,
  error: Number.NaN,
  carried: false,
  polarity: undefined,
  late: undefined,
};

function inputResult(
  channel: number,
  { tones, noise, signalToNoise, crosstalk, hum, distortion }: Input,
  [left = nothing, right = nothing]: readonly Entry[],
): InputResult {
  return {
    channel,
    left: entryResult(left),
    right: entryResult(right),
    ...given("tones", some(tones)),
    ...given("noise", some(noise)),
    ...given(
      "signalToNoise",
      [tones, noise].every((one) => one > least) ? signalToNoise : undefined,
    ),
    ...given(
      "crosstalk",
      crosstalk && { ...given("level", some(crosstalk.level)), ...given("sign", crosstalk.sign) },
    ),
    ...given("hum", hum && { ...hum, levels: hum.levels.map((one) => one ?? null) }),
    ...given("distortion", distortion && { ...distortion }),
  };
}

const entryResult = ({ level, error, carried, polarity, late }: Entry): EntryResult => ({
  ...given("level", some(level)),
  ...given("error", some(level) === undefined ? undefined : error),
  carried,
  ...given("polarity", polarity),
  ...given("late", late),
});
