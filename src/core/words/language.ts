import type { EarCheckName } from "#core/checks/check.ts";
import type { Complaint } from "#core/checks/complaints.ts";
import type { Heard } from "#core/listening/heard.ts";
import type { Refusal } from "#core/measurement/return.ts";
import type { FaultName } from "#core/parts/fault-names.ts";
import type { PromptWord } from "#core/prompts/words.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { SignalName } from "#core/signals/catalogue.ts";
import type { InstrumentName } from "#core/signals/instruments.ts";
import type { MoveWords } from "./move-words.ts";
import type { NoiseWords } from "./noise-words.ts";
import type { PatchingWords } from "./patching-words.ts";
import type { AnswerWords, NameWords, PhraseWords, ReportWords } from "./report-words.ts";
import type { SheetWords } from "./sheet-words.ts";

/** What is said of a fault, given the words for where it is. */
export interface FaultWords {
  /** A sentence without its full stop: 'the tip is open in the feed lead'. */
  readonly is: (where: string) => string;
  /** What a look shows, in a few words. */
  readonly seen: string;
  /** What to do about it. Said after 'volume down first'. */
  readonly mend: (where: string) => string;
}

/** What is said of a check by ear. */
interface CheckWords {
  readonly name: string;
  /** The question, once the sound is over; for the pair, of the first and of the second burst. */
  readonly questions: readonly string[];
  /** What to listen for, before it plays. */
  readonly before: string;
}

/** What is said of complaints, and what people's own words for them may mean. */
export interface ComplaintWords {
  /** What somebody says, in a few words. */
  readonly said: Readonly<Record<Complaint, string>>;
  /** Plain words of this language, and the complaints that each may be: a report to weigh, never to branch on. */
  readonly means: Readonly<Record<string, readonly Complaint[]>>;
  /** Which of them is said where one ear is dead and nobody said which. */
  readonly eitherEar: string;
  /** Which test tells whether it is the listener or the gear, by what is worn. */
  readonly meOrGear: { readonly headphones: string; readonly inEars: string };
}

/** Everything the program says about the rig and its faults, in one language. */
export interface Language {
  readonly phrases: PhraseWords;
  readonly names: NameWords;
  readonly report: ReportWords;
  readonly faults: Readonly<Record<FaultName, FaultWords>>;
  readonly checks: Readonly<Record<EarCheckName, CheckWords>>;
  readonly heard: Readonly<Record<Heard, string>>;
  readonly answers: AnswerWords;
  readonly complaints: ComplaintWords;
  readonly noises: NoiseWords;
  /** What is before a colon is said by itself where there is little room. */
  readonly effects: Readonly<Record<Effect, string>>;
  readonly asItShouldBe: string;
  readonly volumeFirst: string;
  /** Whoever asks and writes down, and what all positions share. */
  readonly operator: string;
  /** Whoever ordered the feed, and how it is meant to be where nothing else was ordered. */
  readonly client: string;
  readonly asOrdered: string;
  readonly shared: string;
  readonly moves: MoveWords;
  /** What is said of a look, of a plug twisted, and of what an instrument found. */
  readonly byHand: {
    readonly look: (place: string) => string;
    /** Of somebody who is asked instead of looked at. */
    readonly ask: (person: string) => string;
    readonly twist: (part: string) => string;
    readonly complaint: string;
    readonly continuity: (part: string, from: string, to: string) => string;
    readonly matrix: string;
  };
  /** Said after a fault that comes and goes. */
  readonly nowAndThen: string;
  /** What no check here can tell, whatever was answered. Noises that nobody asked after are said besides (`noises.unasked`). */
  readonly neverTested: readonly string[];
  readonly where: (spot: Spot) => string;
  /** What is said before anything is plugged in. */
  readonly patching: PatchingWords;
  /** What is spoken into the ears, word by word. */
  readonly prompts: Readonly<Partial<Record<PromptWord, string>>>;
  /** Every sound: what it is, and what to hear or to read. */
  readonly signals: Readonly<
    Record<SignalName | InstrumentName, { readonly what: string; readonly hear: string }>
  >;
  /** The sheet that goes with the sounds as files. */
  readonly sheet: SheetWords;
  /** Why a capture is not judged, and what to do: sentences, of what was measured and the bound that it broke. */
  readonly refusals: Readonly<Record<Refusal, (measured: number, bound: number) => string>>;
}

/** Where a fault sits: its part, and its plug or socket where that matters. */
export interface Spot {
  readonly part: string;
  readonly at: string;
  /** The box its plug belongs in. */
  readonly into?: string;
  /** Which plug, where several of the part's go into that box. */
  readonly plug?: string;
  /** The socket it stands in by mistake. */
  readonly socket?: string;
}
