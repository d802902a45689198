import type { PartKind } from "#core/parts/catalogue.ts";
import type { Unit } from "#core/parts/kind.ts";
import type { Socket, Tie } from "#core/parts/part.ts";
import type { Contact, PlugKind } from "#core/parts/plugs.ts";
import type { Balancing } from "#core/parts/stages.ts";
import type { HumRisk } from "#core/patching/hum.ts";
import type { Tone } from "#core/patching/tone.ts";
import type { Want } from "#core/patching/wants.ts";

/** What a kind of part is called, without its article, and in a line what it is. */
export interface KindWords {
  readonly name: string;
  readonly note: string;
}

/** What is said of an output stage that nobody sees from outside. */
interface StageWords {
  readonly name: string;
  /** What is on its hot contact, its cold one and its screen, by what these are called on its socket. */
  readonly carries: (hot: string, cold: string, screen: string) => string;
  /** What a manual writes. */
  readonly manual: string;
}

/** What is said of a socket that can do harm. */
interface HarmWords {
  readonly stop: string;
  readonly why: string;
  readonly instead: string;
}

/** Everything said before anything is plugged in, in one language. */
export interface PatchingWords {
  readonly kinds: Readonly<Record<PartKind, KindWords>>;
  readonly plugs: Readonly<Record<PlugKind, string>>;
  /** A contact by what the trade calls it on this plug. */
  readonly contact: (contact: Contact, plug: PlugKind) => string;
  readonly stages: Readonly<Record<Balancing, StageWords>>;
  readonly wants: Readonly<Record<Want, string>>;
  /** What to weigh, as a sentence without its full stop. */
  readonly ties: Readonly<Record<Tie, string>>;
  readonly tones: Readonly<Record<Tone, string>>;
  readonly hums: Readonly<Record<HumRisk, string>>;
  /** Why it hums: two mains earths, a supply's leakage, or a return that is not joined through. */
  readonly humWhy: Readonly<Record<"earths" | "leakage" | "return", string>>;
  readonly harms: Readonly<Record<NonNullable<Socket["harms"]>, HarmWords>>;
  /** What may be said of a part, by the name of the parameter. */
  readonly parameters: Readonly<Record<string, string>>;
  /** Words to choose from that want more of them. */
  readonly choices: Readonly<Record<string, string>>;
  readonly units: Readonly<Record<Unit, string>>;
  /** Before a hand moves a plug. */
  readonly care: readonly string[];
}
