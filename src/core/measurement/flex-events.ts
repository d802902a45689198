import type { Decibels, Seconds } from "#core/units/units.ts";
import type { FlexJudged } from "./flex-judged.ts";
import type { FlexCause, FlexEvent, FlexFault } from "./flex-names.ts";

/** Breaks closer together than this are one event. */
const together: Seconds = 0.05;
/** A break of two milliseconds, measured with some error, is no shorter than this. */
export const shortest: Seconds = 0.0015;
/** So many shorter ones close together are a crackle as well. */
const ticksForOne = 3;
/** Events kept; the oldest give way. */
const mostKept = 500;

/** What is left of events that gave way to later ones. */
export interface FlexEarlier {
  readonly count: number;
  readonly breaks: number;
  readonly broken: Seconds;
  readonly from: Seconds;
  readonly to: Seconds;
  readonly deepest: Decibels;
  readonly faults: Readonly<Partial<Record<FlexFault, number>>>;
}

interface Told extends FlexJudged {
  readonly at: Seconds;
  readonly end: Seconds;
}

/** Breaks that are close together. */
interface Together {
  readonly at: Seconds;
  end: Seconds;
  breaks: number;
  broken: Seconds;
  long: boolean;
  depth: Decibels;
  atLeast: boolean;
  readonly faults: Map<FlexFault, Seconds>;
  readonly causes: Map<FlexCause, Seconds>;
}

/** Makes events of breaks, and keeps so many. */
export class FlexEvents {
  readonly #past: FlexEvent[] = [];
  #earlier: FlexEarlier | undefined;
  #now: Together | undefined;
  #next = 1;

  /** A break has ended. */
  add(told: Told): void {
    this.#now = this.#now === undefined ? begun(told) : joined(this.#now, told);
  }

  /** Nothing is broken at this time: what ended long enough ago is done. The event, if there was one. */
  settle(time: Seconds): FlexEvent | undefined {
    const now = this.#now;
    if (now === undefined || time - now.end <= together) return undefined;
    this.#now = undefined;
    if (!counts(now)) return undefined;
    const event = eventOf(now, this.#next, false);
    this.#next += 1;
    this.#past.push(event);
    if (this.#past.length > mostKept) this.#summarise(this.#past.shift());
    return event;
  }

  /** The event that is not done, with a break that still lasts. */
  pending(going?: Told): FlexEvent | undefined {
    const now = this.#now === undefined ? undefined : copied(this.#now);
    const all = going === undefined ? now : withGoing(now, going);
    if (all === undefined || !counts(all)) return undefined;
    return eventOf(all, this.#next, going !== undefined);
  }

  /** Those that are done, oldest first. */
  get past(): readonly FlexEvent[] {
    return this.#past;
  }

  /** Those that are not kept. */
  get earlier(): FlexEarlier | undefined {
    return this.#earlier;
  }

  #summarise(event: FlexEvent | undefined): void {
    if (event === undefined) return;
    const before = this.#earlier ?? nothingYet(event.at);
    this.#earlier = {
      count: before.count + 1,
      breaks: before.breaks + event.breaks,
      broken: before.broken + event.broken,
      from: before.from,
      to: event.at + event.duration,
      deepest: Math.max(before.deepest, event.depth),
      faults: { ...before.faults, [event.fault]: (before.faults[event.fault] ?? 0) + 1 },
    };
  }
}

const nothingYet = (from: Seconds): FlexEarlier => ({
  count: 0,
  breaks: 0,
  broken: 0,
  from,
  to: from,
  deepest: 0,
  faults: {},
});

const counts = ({ long, breaks }: Together): boolean => long || breaks >= ticksForOne;

const begun = (told: Told): Together =>
  joined(
    {
      at: told.at,
      end: told.at,
      breaks: 0,
      broken: 0,
      long: false,
      depth: 0,
      atLeast: false,
      faults: new Map(),
      causes: new Map(),
    },
    told,
  );

const copied = (now: Together): Together => ({
  ...now,
  faults: new Map(now.faults),
  causes: new Map(now.causes),
});

const withGoing = (now: Together | undefined, going: Told): Together =>
  now === undefined ? begun(going) : joined(now, going);

function joined(now: Together, { at, end, fault, cause, depth, atLeast }: Told): Together {
  const lasted = end - at;
  now.end = Math.max(now.end, end);
  now.breaks += 1;
  now.broken += lasted;
  now.long ||= lasted >= shortest;
  if (depth > now.depth) Object.assign(now, { depth, atLeast });
  now.faults.set(fault, (now.faults.get(fault) ?? 0) + lasted);
  now.causes.set(cause, (now.causes.get(cause) ?? 0) + lasted);
  return now;
}

function eventOf(now: Together, id: number, going: boolean): FlexEvent {
  const fault = longest(now.faults) ?? "tip";
  const said = [...now.causes.keys()].filter((cause) => cause !== "open or short");
  const [only = "open or short"] = said;
  const cause = said.length === 1 ? only : "open or short";
  return {
    id,
    at: now.at,
    duration: now.end - now.at,
    kind: kindOf(now.breaks, cause),
    fault,
    cause,
    depth: now.depth,
    atLeast: now.atLeast,
    breaks: now.breaks,
    broken: now.broken,
    going,
  };
}

function kindOf(breaks: number, cause: FlexCause): FlexEvent["kind"] {
  if (breaks > 1) return "crackle";
  return cause === "short" ? "short" : "dropout";
}

const longest = <T>(times: ReadonlyMap<T, Seconds>): T | undefined =>
  [...times].reduce<readonly [T | undefined, Seconds]>(
    (best, one) => (one[1] > best[1] ? one : best),
    [undefined, -1],
  )[0];
