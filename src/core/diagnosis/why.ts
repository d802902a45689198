import {
  type Answered,
  type Asked,
  type Finding,
  type Happening,
  isAnswered,
  isNoticed,
  isReading,
  type Measured,
  type Reading,
} from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { predictTwist, twistAnswers } from "#core/checks/twist.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { size } from "#core/units/complex.ts";
import type { Probability } from "#core/units/units.ts";
import { chanceOfReading, ohmsUnder } from "./continuity.ts";
import { livesOf } from "./course.ts";
import { type Era, eraAfter } from "./era.ts";
import { questionsOf } from "./evidence.ts";
import type { Group } from "./groups.ts";
import type { Model } from "./model.ts";
import { through } from "./ways.ts";

/** One finding, against what a suspect would have made likely. */
export interface Reason {
  readonly asked: Finding["asked"];
  /** For each question: the likeliest answer under the suspect alone, what was answered, and how likely that was. */
  readonly answers: readonly {
    readonly question: string;
    readonly predicted: string;
    readonly given: readonly string[];
    readonly likelihood: Probability;
  }[];
}

/** The rig as it was when something was found, and the suspect where it was then. */
interface Then {
  readonly model: Model;
  readonly era: Era;
  readonly epoch: number;
  readonly faults: readonly RigFault[];
}

/** Predicted against given, finding by finding, for the first fault of a group standing alone: of the rig as the moves before each left it. */
export function reasonsFor(
  model: Model,
  group: Group,
  happenings: readonly Happening[],
): readonly Reason[] {
  const moves = happenings.flatMap((one) => (one.kind === "move" ? [one.move] : []));
  const era = eraAfter(model, moves);
  const [fault] = group.faults;
  const reasons: Reason[] = [];
  let epoch = 0;
  for (const happening of happenings)
    if (happening.kind === "move") epoch++;
    else if (happening.kind === "finding" && fault !== undefined) {
      const faults = isLikelyThere(fault, era, epoch) ? [fault] : [];
      reasons.push(...reason({ model, era, epoch, faults }, happening.finding));
    }
  return reasons;
}

/** Whether a fault that was there at the start was rather still there in an epoch. */
function isLikelyThere(fault: RigFault, { course }: Era, epoch: number): boolean {
  const lives = livesOf(fault, course).filter(({ from }) => from === 0);
  const all = lives.reduce((sum, { odds }) => sum + odds, 0);
  const left = lives.reduce((sum, { odds, until }) => sum + (until > epoch ? odds : 0), 0);
  return left >= all / 2;
}

/** What would be asked, and how likely each answer is under the suspect. */
interface Prediction {
  readonly question: string;
  readonly answers: readonly string[];
  readonly chances: Float64Array;
}

function reason(then: Then, finding: Finding): readonly Reason[] {
  if (isAnswered(finding)) return [told(then, finding)];
  if (isReading(finding)) return read(then, finding);
  // A noise speaks neither for nor against a fault that changes what comes left and right.
  return isNoticed(finding) ? [] : [measured(then, finding)];
}

function told(then: Then, { asked, results }: Answered): Reason {
  return {
    asked,
    answers: predicted(then, asked).map(({ question, answers, chances }, at) => {
      const given = results[at] ?? answers;
      return {
        question,
        predicted: answers[chances.indexOf(Math.max(...chances))] ?? "",
        given,
        likelihood: chances.reduce(
          (sum, p, index) => sum + (given.includes(answers[index] ?? "") ? p : 0),
          0,
        ),
      };
    }),
  };
}

const inOhms = (ohms: number | undefined): string =>
  ohms === undefined || ohms >= 1e6 ? "open" : `${Number(ohms.toPrecision(2))} Ω`;

function read({ model, faults }: Then, reading: Reading): readonly Reason[] {
  const chance = chanceOfReading(model.rig, reading);
  if (chance === undefined) return []; // the drawing has changed since
  const own = faults.filter(({ part }) => part === reading.asked.part);
  const answer = {
    question: "continuity",
    predicted: inOhms(ohmsUnder(model.rig, reading, own)),
    given: [inOhms(reading.ohms)],
    likelihood: chance(own),
  };
  return [{ asked: reading.asked, answers: [answer] }];
}

function measured(then: Then, { asked, gains }: Measured): Reason {
  const { model } = then;
  const row = (all: readonly (readonly [number, number])[]) =>
    all.map(([re, im]) => `${re.toFixed(2)}${im < 0 ? "" : "+"}${im.toFixed(2)}i`).join(" ");
  const [{ number } = { number: model.pool.straight }] = model.pool.showings(
    wayThen(then, asked.position),
  );
  const largest = Math.max(
    ...model.pool.behaviour(model.healthy(asked.position)).gains.flat().map(size),
  );
  const would = model.pool
    .behaviour(number)
    .gains.flat()
    .map(({ re, im }) => [re / largest, im / largest] as const);
  const far = would.reduce(
    (sum, [re, im], at) =>
      sum + ((gains[at]?.[0] ?? 0) - re) ** 2 + ((gains[at]?.[1] ?? 0) - im) ** 2,
    0,
  );
  const answer = {
    question: "matrix",
    predicted: row(would),
    given: [row(gains)],
    likelihood: Math.exp(-far / 0.02),
  };
  return { asked, answers: [answer] };
}

/** What the way to a position did then. */
function wayThen({ model, era, epoch, faults }: Then, position: string): number {
  const ways = model.waysOf(era.course.rigs[epoch] ?? model.drawn);
  return through(model.pool, ways.to(position), faults);
}

function predicted(then: Then, asked: Asked): readonly Prediction[] {
  const { model, faults } = then;
  if (asked.check === "look") {
    const look = model.looks.find((one) => one.place === asked.place);
    if (look === undefined) return []; // the drawing has changed since
    const chances = predictLook(look, sightsOf(look, faults));
    return [{ question: "look", answers: look.answers, chances }];
  }
  if (asked.check === "twist") {
    const here = faults.filter(({ part }) => part === asked.part);
    return [{ question: "twist", answers: twistAnswers, chances: predictTwist(here) }];
  }
  const way = wayThen(then, asked.position);
  return questionsOf(asked).map((question) => ({
    question: question.name,
    answers: question.answers,
    chances: model.predict(question, asked.position)(way),
  }));
}
