import type { Method } from "#core/proving/choice.ts";
import type { WireState } from "#core/proving/wiring.ts";

/** A wire in words: its ends, and where it went wrong what it is joined to instead. */
interface WireEnds {
  readonly from: string;
  readonly to: string;
  readonly ohms: string;
  readonly instead: string;
}

/** Everything said of a lead that is proved, in one language. */
export interface ProvingWords {
  readonly methods: Readonly<Record<Method, string>>;
  /** What a plug, a leg or a socket of a lead is called. */
  readonly end: (name: string) => string;
  /** A contact on one of them. */
  readonly contact: (contact: string, end: string) => string;
  /** How a wire is, as a sentence without its full stop. */
  readonly wires: Readonly<Record<WireState, (wire: WireEnds) => string>>;
  /** What to do with a soldering iron, as a sentence without its full stop; of a sound wire nothing. */
  readonly solder: Readonly<Record<Exclude<WireState, "as intended">, (wire: WireEnds) => string>>;
  /** Before the iron is hot. */
  readonly solderCare: readonly string[];
  readonly notTested: (what: string) => string;
  readonly capacitance: string;
  readonly soundLead: string;
}
