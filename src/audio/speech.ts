import type { IAudioContext } from "standardized-audio-context";
import { joined } from "#core/prompts/joined.ts";
import { gapsOf, type Prompt, wordsOf } from "#core/prompts/prompt.ts";
import { type Route as Ears, routed } from "#core/prompts/routed.ts";
import { type SpokenTag, speaking } from "#core/prompts/speaking.ts";
import type { PromptWord } from "#core/prompts/words.ts";
import { admit } from "#core/signals/admit.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import { tamed } from "./ear-matrix.ts";
import type { Programme } from "./programme.ts";

/** How prompts are said. */
export interface SpeakHow {
  /** Where: in one ear, in the middle, or so that it is heard through a faulty feed, which it is unless told. */
  readonly to?: Ears;
  /** As a feed with this matrix would sound; left out, as it is. */
  readonly through?: EarMatrix | undefined;
}

/** Fetches the file of a word in a language. Rejects where it cannot be had. */
export type FetchWord = (word: PromptWord, tag: SpokenTag) => Promise<ArrayBuffer>;

/** The files that are shipped with the page. */
export const shippedWords: FetchWord = async (word, tag) => {
  const answer = await fetch(`prompts/${tag}/${word}.wav`);
  if (!answer.ok) throw new Error(`no file for the word ${word} in ${tag}: ${answer.status}`);
  return answer.arrayBuffer();
};

/** Prompts as samples; each word is fetched and decoded once for a rate. */
export class Speech {
  /** The language it speaks from now on. */
  tag: SpokenTag = "en";
  readonly #fetch: FetchWord;
  readonly #words = new Map<string, Promise<Float32Array>>();

  constructor(fetch: FetchWord) {
    this.#fetch = fetch;
  }

  /** What some prompts put into the graph, or why not: a file that did not load, or a sound that gate one refuses. */
  async said(
    prompts: readonly Prompt[],
    context: IAudioContext,
    { to = "either ear", through }: SpeakHow,
  ): Promise<Programme | "not loaded" | "refused"> {
    const words = prompts.flatMap((prompt) => wordsOf(speaking[this.tag], prompt));
    const pieces = await Promise.all(words.map((word) => this.#piece(word, context))).catch(
      () => undefined,
    );
    if (pieces === undefined) return "not loaded";
    const { sampleRate: rate } = context;
    const sound = admit(routed(joined(pieces, rate, gapsOf(words)), rate, to));
    const ears = through && tamed(through);
    if ("refused" in sound || (through && !ears)) return "refused";
    return { sound, through: ears, lasts: sound.left.length / rate, sounding: 1 };
  }

  #piece(word: PromptWord, context: IAudioContext): Promise<Float32Array> {
    const key = `${this.tag} ${word} ${context.sampleRate}`;
    const piece = this.#words.get(key) ?? this.#decoded(word, context);
    this.#words.set(key, piece);
    // One that did not come is asked for again.
    piece.catch(() => this.#words.delete(key));
    return piece;
  }

  async #decoded(word: PromptWord, context: IAudioContext): Promise<Float32Array> {
    const buffer = await context.decodeAudioData(await this.#fetch(word, this.tag));
    return buffer.getChannelData(0);
  }
}
