import { catalogue } from "#core/checks/catalogue.ts";
import type { EarCheck } from "#core/checks/check.ts";
import type { Asked } from "#core/checks/finding.ts";
import { predictLook, sightsOf } from "#core/checks/look.ts";
import { given, lookSlip } from "#core/checks/slips.ts";
import { predictTwist, twistSeconds } from "#core/checks/twist.ts";
import type { Test } from "#core/inference/problem.ts";
import type { Move } from "#core/rig/moves.ts";
import { instrumentAt, wornAt } from "#core/rig/rig.ts";
import { answersTo, neighbour, walk } from "./asking.ts";
import type { Together } from "./beliefs.ts";
import type { Evidence } from "./evidence.ts";
import type { Model } from "./model.ts";
import { trialsAt } from "./trials.ts";

/** What a person is told to do next. */
export type Doing =
  | { readonly do: "ask"; readonly asked: Asked }
  /** A move made to see what changes; then a check by ear. */
  | { readonly do: "try"; readonly move: Move }
  /** A move that may cure. */
  | { readonly do: "mend"; readonly move: Move };

/** Something to ask or to try. */
export interface Offer {
  readonly doing: Doing;
  readonly test: Test;
}

/** What offers are made from. */
export interface Asking {
  readonly model: Model;
  readonly evidence: Evidence;
  readonly position: string;
  readonly together: readonly Together[];
}

/**
 * Everything that can be asked or tried at a position, with what it would be answered under each thing that may be wrong. Where an instrument
 * stands nobody hears anything: looks are left.
 */
export const offersAt = (asking: Asking, well: readonly string[]): readonly Offer[] =>
  instrumentAt(asking.model.rig, asking.position) === undefined
    ? [
        ...byEar(asking),
        ...byEye(asking),
        ...byTwist(asking),
        ...atNeighbour(asking),
        ...byTrial(asking, well),
      ]
    : byEye(asking);

/** Asked twice it gives the same judgement; a third time would find nothing but a second slip. */
const mostTimes = 2;

/** How often a check was asked at a position since anything on the way there was touched. */
const asked = ({ heard, nowAt }: Evidence, check: EarCheck, position: string): number =>
  Math.max(
    0,
    ...heard
      .filter((one) => one.position === position && one.channel === nowAt(position))
      .filter(({ question }) => check.questions.includes(question))
      .map(({ times }) => times),
  );

const byEar = ({ model, evidence, position, together }: Asking): readonly Offer[] =>
  catalogue
    .filter((check) => asked(evidence, check, position) < mostTimes)
    .map((check) => ({
      doing: { do: "ask", asked: { check: check.name, position } },
      test: {
        seconds: check.seconds,
        answers: together.map(({ behaviour }) =>
          answersTo(model, evidence, behaviour, position, check),
        ),
      },
    }));

function byEye({ model, evidence, position, together }: Asking): readonly Offer[] {
  const way = evidence.era.onTheWay(position);
  const places = new Set([...way].flatMap((fault) => (fault.seen ? [fault.place] : [])));
  return model.looks
    .filter(({ place }) => places.has(place) && !evidence.seen.has(place))
    .map((look) => ({
      doing: { do: "ask", asked: { check: "look", place: look.place } },
      test: {
        seconds: look.seconds,
        answers: together.map(({ faults }) =>
          given(predictLook(look, sightsOf(look, faults)), lookSlip),
        ),
      },
    }));
}

/** Plugs that were not twisted since they were touched, of what is worn: where contacts make and break most. */
function byTwist({ evidence, position, together }: Asking): readonly Offer[] {
  const part = wornAt(evidence.era.course.state.rig, position);
  const plugs = evidence.era.course.state.rig.plugged.filter((one) => one.part === part);
  return plugs
    .filter(({ plug }) => !evidence.twisted.has(`${part} ${plug}`))
    .map(({ plug }) => ({
      doing: { do: "ask", asked: { check: "twist", part, plug } },
      test: {
        seconds: twistSeconds,
        answers: together.map(({ faults }) =>
          given(
            predictTwist(
              faults.filter((one) => one.part === part && (one.at === plug || one.at === "body")),
            ),
            lookSlip,
          ),
        ),
      },
    }));
}

/** A check at another position tells what both share; what is that position's own counts as well. */
function atNeighbour({ model, evidence, position, together }: Asking): readonly Offer[] {
  const other = neighbour(model, evidence, position);
  if (other === undefined) return [];
  const way = evidence.era.onTheWay(other);
  return catalogue
    .filter((check) => check.required && asked(evidence, check, other) === 0)
    .map((check) => ({
      doing: { do: "ask", asked: { check: check.name, position: other } },
      test: {
        seconds: check.seconds + walk,
        answers: together.map(({ faults }) =>
          answersTo(
            model,
            evidence,
            model.under(
              other,
              faults.filter((fault) => way.has(fault)),
            ),
            other,
            check,
          ),
        ),
      },
    }));
}

function byTrial(
  { model, evidence, position, together }: Asking,
  well: readonly string[],
): readonly Offer[] {
  return trialsAt(model, evidence.era, position, well).flatMap(({ move, seconds, after }) =>
    catalogue
      .filter(({ required }) => required)
      .map((check) => ({
        doing: { do: "try", move },
        test: {
          seconds: seconds + check.seconds,
          answers: together.map(({ faults }) => model.answers(check, position)(after(faults))),
        },
      })),
  );
}
