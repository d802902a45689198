import type {
  Crosstalk,
  Estimate,
  Hum,
  Input,
  ReturnMeasurement,
} from "#core/measurement/return.ts";
import type { Words } from "#ui/words/use-words.ts";
import type { ShownEntries, ShownEntry } from "./return-shown.ts";

/** Levels nearer than this are the same to anybody, decibels. */
const alike = 0.05;

/** What of each side comes back where it belongs. */
export const sideLines = (words: Words, entries: ShownEntries): readonly string[] =>
  entries.map((row, input) => sideWords(words, input === 0 ? 0 : 1, row[input]));

function sideWords(words: Words, side: 0 | 1, entry: ShownEntry | undefined): string {
  const { gone, told } = words.returning.side;
  if (entry === undefined || !entry.carried) return gone(side);
  return told(side, levelWords(words, entry.level), polarityWords(words, entry.polarity));
}

function levelWords({ figures, returning }: Words, level: number): string {
  const { even, down, up } = returning.side;
  if (Math.abs(level) < alike) return even;
  return level < 0 ? down(figures.decibels(-level)) : up(figures.decibels(level));
}

function polarityWords({ returning }: Words, polarity: 1 | -1 | undefined): string {
  const { unknown, asSent, inverted } = returning.side;
  if (polarity === undefined) return unknown;
  return polarity === 1 ? asSent : inverted;
}

/** What comes over from one side to the other, input by input. */
export const overLines = (
  words: Words,
  { inputs, entries }: ReturnMeasurement,
): readonly string[] =>
  inputs.flatMap(({ crosstalk }, input) => {
    if (crosstalk === undefined) return [];
    const row = entries[input] ?? [];
    const weaker = (row[0]?.level ?? 0) < (row[1]?.level ?? 0) ? 0 : 1;
    return [overWords(words, crosstalk, weaker, input + 1, row[weaker]?.carried ?? false)];
  });

function overWords(
  { figures, returning: { over } }: Words,
  { level, sign }: Crosstalk,
  weaker: 0 | 1,
  input: number,
  carried: boolean,
): string {
  const under = figures.decibels(-level);
  if (!carried) return over.none(weaker, input, under);
  return level > -alike ? over.asLoud(weaker, input, sign) : over.under(weaker, input, under, sign);
}

/** When the sides come, and how the clocks run. Where a recording made elsewhere begins says nothing of the way round. */
export function timeLines(
  words: Words,
  { between, delay, drift }: ReturnMeasurement,
  isHere: boolean,
): readonly string[] {
  const { figures, returning } = words;
  const { round, clocksAlike, clocks } = returning.time;
  return [
    ...(between === undefined ? [] : [betweenWords(words, between)]),
    ...(isHere ? [round(`${figures.fixed(1000 * delay.value, 1)} ms`)] : []),
    Math.abs(drift.value) < 0.05 ? clocksAlike : clocks(figures.fixed(drift.value, 1)),
  ];
}

function betweenWords({ figures, returning }: Words, { value, error }: Estimate): string {
  const { same, late } = returning.time;
  const micro = 1e6 * value;
  if (Math.abs(micro) < Math.max(0.5, 3e6 * error)) return same;
  return late(value > 0 ? 1 : 0, `${figures.fixed(Math.abs(micro), 1)} µs`);
}

/** Noise, hum and distortion of each input. */
export const besideLines = (words: Words, { inputs }: ReturnMeasurement): readonly string[] =>
  inputs.map((input, at) =>
    words.returning.beside.line(at + 1, [
      noiseWords(words, input),
      humWords(words, input.hum),
      ...distortionWords(words, input),
    ]),
  );

function noiseWords({ figures, returning }: Words, { noise, signalToNoise }: Input): string {
  const level = figures.fixed(noise, 0);
  return signalToNoise > 0
    ? returning.beside.noiseUnder(level, figures.decibels(signalToNoise))
    : returning.beside.noise(level);
}

function humWords({ figures, returning }: Words, hum: Hum | undefined): string {
  const lines = (hum?.levels ?? []).flatMap((level, at) =>
    level === undefined ? [] : [{ level, n: at + 1 }],
  );
  const [worst] = lines.sort((a, b) => b.level - a.level);
  return hum === undefined || worst === undefined
    ? returning.beside.noHum
    : returning.beside.hum(hum.mains, hum.mains * worst.n, figures.fixed(worst.level, 0));
}

function distortionWords({ figures, returning }: Words, { distortion }: Input): readonly string[] {
  if (distortion === undefined) return [];
  const { distortion: said, under, percent } = returning.beside;
  const fine = (part: number): string => figures.fixed(part, part < 0.1 ? 3 : 1);
  const part = ({ value, error }: Estimate): string => {
    const bound = Math.max(0.001, 300 * error);
    const found = 100 * Math.max(value, 0);
    return found < bound ? under(fine(bound)) : percent(fine(found));
  };
  return [said(part(distortion.second), part(distortion.third))];
}
