import { readFileSync } from "node:fs";
import wavefile from "wavefile";
import type { SpokenTag } from "#core/prompts/speaking.ts";
import type { PromptWord } from "#core/prompts/words.ts";

/** Where a word's shipped file is. */
export const promptPath = (tag: SpokenTag, word: PromptWord): string =>
  `public/prompts/${tag}/${word}.wav`;

/** A shipped file as it says it is, and its samples, full scale 1. */
export function promptRead(tag: SpokenTag, word: PromptWord) {
  const wav = new wavefile.WaveFile(readFileSync(promptPath(tag, word)));
  return { format: wav.fmt, samples: samplesOf(wav, 2 ** 15) };
}

const read = new Map<string, Float32Array>();

/** The samples of a shipped file at another rate, as decoding it at that rate gives them. */
export function promptAt(tag: SpokenTag, word: PromptWord, rate: number): Float32Array {
  const key = `${tag} ${word} ${rate}`;
  const known = read.get(key);
  if (known !== undefined) return known;
  const wav = new wavefile.WaveFile(readFileSync(promptPath(tag, word)));
  wav.toBitDepth("32f");
  wav.toSampleRate(rate, { method: "sinc" });
  const made = samplesOf(wav, 1);
  read.set(key, made);
  return made;
}

const samplesOf = (wav: wavefile.WaveFile, full: number): Float32Array =>
  Float32Array.from(
    wav.getSamples(false, Float64Array) as unknown as Float64Array,
    (sample) => sample / full,
  );
