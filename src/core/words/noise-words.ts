import type { Noise, NoiseAnswer, TrialName } from "#core/checks/noise.ts";
import type { CauseName } from "#core/noises/cause.ts";
import type { NoiseCaution, Remedy } from "#core/noises/remedy.ts";

/** What is said of noises: what is tried, what was noticed, where they come in, and what helps. */
export interface NoiseWords {
  /** By its name, as in a list. */
  readonly named: Readonly<Record<Noise, string>>;
  /** What it sounds like, in a few words. */
  readonly sounds: Readonly<Record<Noise, string>>;
  /** What to do: sentences. `where` is the part, socket or seat that a hand or an ear goes to. */
  readonly trials: Readonly<Record<TrialName, (where: string, noise: Noise) => string>>;
  /** The same in a few words, of something that was done. */
  readonly tried: Readonly<Record<TrialName, (where: string) => string>>;
  /** What is asked then. */
  readonly becomes: Readonly<Record<Noise, string>>;
  readonly withHand: Readonly<Record<Noise, string>>;
  readonly thereToo: Readonly<Record<Noise, string>>;
  readonly answers: Readonly<Record<NoiseAnswer, string>>;
  /** Where it comes in: sentences without their full stop. */
  readonly causes: Readonly<Record<CauseName, (where: string, noise: Noise) => string>>;
  /** What that is: sentences. */
  readonly means: Readonly<Record<CauseName, string>>;
  /** What helps, and what must be said with it: sentences. */
  readonly remedies: Readonly<Record<Remedy, string>>;
  readonly cautions: Readonly<Record<NoiseCaution, string>>;
  /** Faults that the checks by ear find bring this noise with them. */
  readonly alsoByEar: (faults: readonly string[]) => string;
  /** Noises that nobody asked after, and one that somebody asked after at some seats alone. */
  readonly unasked: (named: readonly string[]) => string;
  readonly askedOnlyAt: (named: string, seats: string) => string;
  /** So many bits for so many seconds. */
  readonly tells: (bits: string, seconds: number) => string;
}

/** Names in a row, the word for 'and' before the last. */
export const listed = (names: readonly string[], and: string): string =>
  names.length < 2
    ? names.join("")
    : `${names.slice(0, -1).join(", ")} ${and} ${names.at(-1) ?? ""}`;
