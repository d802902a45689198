import { expect, test } from "vitest";
import { joined } from "#core/prompts/joined.ts";
import { gapsOf, type Prompt, wordsOf } from "#core/prompts/prompt.ts";
import { routed } from "#core/prompts/routed.ts";
import { type SpokenTag, speaking } from "#core/prompts/speaking.ts";
import { phrases } from "#core/prompts/words.ts";
import { admit } from "#core/signals/admit.ts";

/** The shipped files as this browser decodes them for an output of this rate. */
async function decoded(tag: SpokenTag, rate: number): Promise<ReadonlyMap<string, Float32Array>> {
  const context = new OfflineAudioContext(1, 1, rate);
  const entries = speaking[tag].words.map(async (word) => {
    const response = await fetch(`/prompts/${tag}/${word}.wav`);
    const buffer = await context.decodeAudioData(await response.arrayBuffer());
    expect([buffer.numberOfChannels, buffer.sampleRate], word).toEqual([1, rate]);
    return [word, buffer.getChannelData(0)] as const;
  });
  return new Map(await Promise.all(entries));
}

/** Together they have every word. */
const prompts: readonly Prompt[] = [
  ...phrases.map((prompt): Prompt => ({ prompt })),
  ...Array.from({ length: 19 }, (_, n): Prompt => ({ prompt: "position", number: n + 1 })),
  ...[21, 32, 43, 54, 65, 76, 87, 98].map((number): Prompt => ({ prompt: "position", number })),
  { prompt: "outputs", numbers: [9, 56] },
];

test.for([
  ["en", 44_100],
  ["en", 48_000],
  ["en", 96_000],
  ["de", 48_000],
] as const)("decoded in %s at %i Hz every prompt passes gate one", async ([tag, rate]) => {
  const words = await decoded(tag, rate);
  for (const prompt of prompts) {
    const named = wordsOf(speaking[tag], prompt);
    const pieces = named.map((word) => words.get(word) ?? new Float32Array());
    const samples = joined(pieces, rate, gapsOf(named));
    const sound = admit(routed(samples, rate, "either ear"));
    expect(sound, JSON.stringify(prompt)).not.toHaveProperty("refused");
  }
});
