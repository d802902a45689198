import type { Beliefs } from "#core/diagnosis/beliefs.ts";
import type { Model } from "#core/diagnosis/model.ts";
import {
  type Derived,
  english,
  mendText,
  type Reason,
  type RigFault,
  reasonsFor,
  type Suspect,
  type Turning,
  turning,
} from "#core/index.ts";
import { askedWords } from "#core/report/asked-words.ts";
import { faultWords } from "#core/report/fault-words.ts";
import { insteadWords, reasonWords } from "#core/report/reason-words.ts";
import type { SuspectResult } from "./diagnosis-format.ts";

/** A suspect with its members and its reasons, and what tells it from the `first` one, where it is another. */
export function suspectResult(
  derived: Derived,
  { group, probability }: Suspect,
  first: Suspect | undefined,
  position: string,
): SuspectResult {
  const { model, happenings, beliefs } = derived;
  const turn =
    first === undefined || first.group === group
      ? undefined
      : turning(model, first.group, group, position);
  return {
    group: groupIdOf(derived, group.faults),
    probability: shown(probability),
    faults: group.faults.map((fault) => ({
      id: fault.id,
      part: fault.part,
      place: fault.place,
      words: faultWords(english, model, fault),
      mend: mendText(english, model.rig, fault),
      seconds: fault.repair,
      probability: shown(chanceOf(beliefs, fault)),
    })),
    explanation: reasonsFor(model, group, happenings).map((reason) =>
      reasonResult(derived, reason),
    ),
    ...(turn === undefined ? {} : { apart: apartResult(model, turn) }),
  };
}

const apartResult = (model: Model, turn: Turning) => ({
  asked: turn.asked,
  words: askedWords(english, model, turn.asked),
  instead: turn.instead.map(({ answer }) => answer),
  answers: [...insteadWords(english, model, turn)],
});

/** The id of the group that some faults are of, in the rig as drawn. */
export function groupIdOf({ groups }: Derived, faults: readonly RigFault[]): string {
  const [first] = faults;
  const home = groups.find((group) => first !== undefined && group.faults.includes(first));
  return (home?.faults[0] ?? first)?.id ?? "";
}

/** To a millionth: sums of many small numbers may come out a hair over one. */
export const shown = (probability: number): number =>
  Math.min(1, Math.max(0, Math.round(probability * 1e6) / 1e6));

/** How likely a fault is there now, over all sets that it is in. */
const chanceOf = ({ era, sets }: Beliefs, fault: RigFault): number =>
  era.branches
    .filter(({ faults }) => faults.includes(fault))
    .map(sets)
    .reduce(
      (all, { faults, probabilities }) =>
        probabilities.reduce((sum, one, at) => sum + (faults[at]?.includes(fault) ? one : 0), all),
      0,
    );

type ReasonResult = SuspectResult["explanation"][number];

function reasonResult({ model }: Derived, reason: Reason): ReasonResult {
  const words = reasonWords(english, model, reason);
  return {
    asked: reason.asked,
    answers: reason.answers.map(({ question, predicted, given, likelihood }, at) => ({
      question,
      words: words[at] ?? "",
      predicted,
      given: [...given],
      likelihood: shown(likelihood),
    })),
  };
}
