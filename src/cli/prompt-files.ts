import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type SpokenTag, speaking } from "#core/prompts/speaking.ts";
import { opens, type PromptWord } from "#core/prompts/words.ts";
import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { prompts as english } from "#core/words/english-prompts.ts";
import { prompts as german } from "#core/words/german-prompts.ts";
import type { Language } from "#core/words/language.ts";

/** Of every file. What `espeak-ng` says has less than a hundredth of its power above half of this. */
const rate: Hertz = 16_000;
/** Of every file, so that words go together. The shaping leaves peaks less than 12 dB above it. */
const level: DecibelsFullScale = -18;
/** So much is left before and after a word, and half of it is a ramp. */
const margin: Seconds = 0.01;
/** What stays so far below a word's peak, at its ends, is not part of it. */
const faint = fromDecibels(-46);

/**
 * Another language is a line here. `espeak-ng` speaks clearest in the first English voice: most power from 1 to 4 kHz; of the German
 * ones this variant has the lowest peaks.
 */
const languages: Readonly<
  Record<SpokenTag, { readonly voice: string; readonly texts: Language["prompts"] }>
> = {
  en: { voice: "en-gb", texts: english },
  de: { voice: "de+m7", texts: german },
};

/**
 * What `espeak-ng` calls words a minute, for a word alone, which it draws out, and for a sentence. What comes of it is
 * moderate: a digit lasts about 0.35 s, a sentence has four to five syllables a second.
 */
const speeds = { word: 190, sentence: 175 };
/** Of `espeak-ng`, 0 to 99: a little above its middle, well clear of the high-pass. */
const pitch = 60;

/**
 * Takes away what is slower than speech, evens out loud and soft (2.5 to 1 above -30 dB), then bends the peaks over 14 dB
 * below the greatest, so that words are as loud as the knocks under the same cap of the peaks.
 */
const shaping = [
  ...["gain", "-6", "highpass", "80"],
  ...["compand", "0.01,0.2", "6:-60,-60,-30,-30,0,-18", "0", "-30", "0.01"],
  ...["gain", "-n", "-1", "compand", "0,0", "3:-90,-90,-14,-14,0,-10"],
  ...["highpass", "40", "rate", "-v", `${rate}`, "pad", "0.02", "0.02"],
];
const raw = ["-t", "raw", "-r", `${rate}`, "-e", "signed", "-b", "16", "-c", "1", "-L"];

/** A program is missing, or failed: what to say of it. */
export class NotMade extends Error {}

function run(program: string, args: readonly string[], input?: Uint8Array): Buffer {
  const { error, status, stdout, stderr } = spawnSync(program, args, { input, timeout: 60_000 });
  if (error !== undefined && "code" in error && error.code === "ENOENT")
    throw new NotMade(`${program} is not installed; the prompts are made with espeak-ng and sox`);
  if (error !== undefined || status !== 0)
    throw new NotMade(`${program}: ${error?.message ?? stderr.toString().trim()}`);
  return stdout;
}

/** The file of one word in a language: WAV, mono, 16 bit, 16 kHz. The same versions of the programs give the same bytes. */
export function promptFile(language: SpokenTag, word: PromptWord): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), "prompt-"));
  try {
    const [said, made] = [join(folder, "said.wav"), join(folder, "made.wav")];
    const { voice, texts } = languages[language];
    const text = texts[word];
    if (text === undefined) throw new NotMade(`${word} is not said in ${language}`);
    const speed = text.includes(" ") ? speeds.sentence : speeds.word;
    const how = ["-v", voice, "-s", `${speed}`, "-p", `${pitch}`, "-w", said];
    run("espeak-ng", [...how, "--", opens(word) ? `${text},` : text]);
    const shaped = run("sox", ["-D", said, ...raw, "-", ...shaping]);
    const { from, to, gain } = stretchOf(shaped);
    const ends = ["trim", `${from}s`, `${to - from}s`, "gain", gain.toFixed(3)];
    const fades = ["fade", "h", `${margin / 2}`, "0", `${margin / 2}`];
    run("sox", ["-D", ...raw, "-", "-b", "16", made, ...ends, ...fades], shaped);
    return readFileSync(made);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Every word of a language with its file. */
export const promptFiles = (language: SpokenTag): readonly (readonly [PromptWord, Uint8Array])[] =>
  speaking[language].words.map((word) => [word, promptFile(language, word)]);

/** Where the word is among the samples, margins included, and how many decibels bring it to the level. */
function stretchOf(bytes: Buffer) {
  const samples = Float64Array.from(
    { length: bytes.length >> 1 },
    (_, n) => bytes.readInt16LE(2 * n) / 2 ** 15,
  );
  const peak = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const heard = (sample: number) => Math.abs(sample) > faint * peak;
  const left = Math.round(margin * rate);
  const from = Math.max(0, samples.findIndex(heard) - left);
  const to = Math.min(samples.length, samples.findLastIndex(heard) + 1 + left);
  const stretch = samples.subarray(from, to);
  const power = stretch.reduce((sum, sample) => sum + sample * sample, 0) / stretch.length;
  return { from, to, gain: level - toDecibels(Math.sqrt(power)) };
}
