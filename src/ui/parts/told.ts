import { earCheck } from "#core/checks/catalogue.ts";
import type { Finding } from "#core/checks/finding.ts";
import { asItShouldBe } from "#core/checks/look.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Entry } from "#core/session/log.ts";
import { english } from "#core/words/english.ts";
import { seenWords } from "./look-answers.ts";
import { placeName, seatName } from "./names.ts";

/** The fault of an id, where the rig can have it. */
export const faultById = (model: Model, id: string) =>
  model.branches.flatMap(({ faults }) => faults).find((fault) => fault.id === id);

/** A place with what is asked there: '2 reader, two knocks' or 'a look at the mixer'. */
export const askedWords = (model: Model, asked: Finding["asked"]): string =>
  asked.check === "look"
    ? `a look at ${placeName(model.rig, asked.place)}`
    : `${seatName(model.rig, asked.position)}, ${english.checks[asked.check].name}`;

/** An answer as it was given; all of a list is 'can't tell'. */
export function answerWords(model: Model, given: readonly string[], all: number): string {
  if (given.length > 1 && given.length === all) return "can't tell";
  const [first = asItShouldBe] = given;
  const fault = faultById(model, first);
  if (fault !== undefined) return seenWords(model.rig, fault);
  return first === asItShouldBe ? english.asItShouldBe : first;
}

/** What a finding or a move said, in one line. */
export function toldWords(model: Model, entry: Entry): string {
  if (entry.entry === "move")
    return `${entry.move.move === "set right" ? "set right" : "seen to"}: ${placeName(model.rig, entry.move.place)}`;
  if (entry.entry !== "finding") return entry.entry;
  const { asked, results } = entry.finding;
  const answers = results.map((given, at) =>
    answerWords(
      model,
      given,
      asked.check === "look" ? 0 : (earCheck(asked.check).questions[at]?.answers.length ?? 0),
    ),
  );
  return `${askedWords(model, asked)}: ${answers.join(", then ")}`;
}
