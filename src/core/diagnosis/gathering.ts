import {
  type Answered,
  type Finding,
  type Happening,
  isAnswered,
  isNoticed,
  isReading,
  type Results,
} from "#core/checks/finding.ts";
import { meant, slip } from "#core/checks/slips.ts";
import { lastTouched } from "./course.ts";
import { type Era, eraAfter } from "./era.ts";
import {
  type AtPosition,
  type Evidence,
  type Heard,
  type Measured,
  questionsOf,
} from "./evidence.ts";
import { glanced, read, twisted } from "./glanced.ts";
import type { Glimpsed } from "./glimpses.ts";
import type { Model } from "./model.ts";

/** Whoever is asked twice gives the same judgement twice; only the slips are drawn anew. So answers to one question are gathered. */
export function evidenceOf(
  model: Model,
  happenings: readonly Happening[],
  absent: ReadonlySet<string> = new Set(),
): Evidence {
  const moves = happenings.flatMap((one) => (one.kind === "move" ? [one.move] : []));
  const gathering = new Gathering(model, eraAfter(model, moves));
  for (const [number, happening] of happenings.entries())
    if (happening.kind === "move") gathering.epoch++;
    else if (happening.kind === "cannot") gathering.cannot.add(JSON.stringify(happening.move));
    else gathering.find(happening.finding, number);
  return gathering.found(absent);
}

/** Findings on their way into evidence, one after the other. */
class Gathering {
  epoch = 0;
  readonly cannot = new Set<string>();
  readonly #model: Model;
  readonly #era: Era;
  readonly #heard: Heard[] = [];
  readonly #measured: Measured[] = [];
  readonly #glimpsed = new Map<string, Glimpsed>();
  /** For each place that was looked at, since when it was untouched then. */
  readonly #seen = new Map<string, number>();
  /** The same for each plug that was twisted. */
  readonly #twisted = new Map<string, number>();

  constructor(model: Model, era: Era) {
    this.#model = model;
    this.#era = era;
  }

  find(finding: Finding, number: number): void {
    if (isAnswered(finding)) this.#told(finding, number);
    else if (isReading(finding))
      this.#note(`meter ${number}`, read(this.#model, this.#era, this.epoch, finding));
    // A noise tells nothing of left and right.
    else if (!isNoticed(finding) && this.#has(finding.asked.position)) {
      const { gains, error, asked, level } = finding;
      const channel = this.#era.channelAt(asked.position, this.epoch);
      const free = level !== undefined;
      this.#measured.push({ position: asked.position, channel, gains, error, free });
    }
  }

  found(absent: ReadonlySet<string>): Evidence {
    const era = this.#era;
    const now = this.epoch;
    const untouched = [...this.#seen].filter(
      ([place, since]) => since === untouchedSince(era, place, now),
    );
    return {
      era,
      heard: this.#heard,
      measured: this.#measured,
      glimpsed: [...this.#glimpsed.values()],
      seen: new Set(untouched.map(([place]) => place)),
      twisted: new Set([...this.#twisted].filter(([, at]) => at === now).map(([plug]) => plug)),
      cannot: this.cannot,
      absent,
      nowAt: (position) => era.channelAt(position, now),
    };
  }

  #told({ asked, results, otherTimes }: Answered, number: number): void {
    if (asked.check === "look") this.#looked(asked.place, results);
    else if (asked.check === "twist") this.#twist(asked.part, asked.plug, results);
    else if (this.#has(asked.position)) {
      this.#hear(asked, results, number);
      if (otherTimes !== undefined) this.#hear(asked, otherTimes, number + 0.5);
    }
  }

  #hear(asked: AtPosition, results: Results, number: number): void {
    const channel = this.#era.channelAt(asked.position, this.epoch);
    for (const one of answered(asked, results, channel, number)) gather(this.#heard, one);
  }

  #looked(place: string, results: Results): void {
    const since = untouchedSince(this.#era, place, this.epoch);
    this.#seen.set(place, since);
    this.#note(`${place} ${since}`, glanced(this.#model, this.#era, this.epoch, place, results));
  }

  /** A second twist of what nobody touched takes the place of the first. */
  #twist(part: string, plug: string, results: Results): void {
    const key = `${part} ${plug}`;
    this.#twisted.set(key, this.epoch);
    this.#note(`twist ${key} ${this.epoch}`, twisted(this.#era, this.epoch, part, plug, results));
  }

  #note(key: string, one: Glimpsed | undefined): void {
    if (one !== undefined) this.#glimpsed.set(key, one);
  }

  #has(position: string): boolean {
    return this.#model.rig.positions.some(({ id }) => id === position);
  }
}

/** Since when nothing that shows at a place was touched. */
const untouchedSince = (era: Era, place: string, epoch: number): number =>
  lastTouched(era.course, (fault) => fault.place === place && fault.seen, epoch);

/** What one asking says, question by question. */
const answered = (asked: AtPosition, results: Results, channel: number, number: number): Heard[] =>
  questionsOf(asked).map((question, at) => {
    const said = known(question.answers, results[at]);
    const weights = meant(question.answers, said, slip);
    return {
      question,
      position: asked.position,
      channel,
      weights,
      said: new Set(said),
      times: 1,
      playings: [{ number, weights }],
    };
  });

/** Those of the answers given that the list has; words it does not know, or none, say nothing. */
function known(answers: readonly string[], given: readonly string[] = answers): readonly string[] {
  const listed = given.filter((one) => answers.includes(one));
  return listed.length > 0 ? listed : answers;
}

/** Adds to the evidence on the same question, or begins it. */
function gather(heard: Heard[], next: Heard): void {
  const at = heard.findIndex(
    (one) =>
      one.question === next.question &&
      one.position === next.position &&
      one.channel === next.channel,
  );
  const before = heard[at];
  if (before === undefined) {
    heard.push(next);
    return;
  }
  const weights = before.weights.map((w, index) => w * (next.weights[index] ?? 1));
  const said = new Set([...before.said, ...next.said]);
  const playings = [...before.playings, ...next.playings];
  heard[at] = { ...before, weights, said, times: before.times + 1, playings };
}
