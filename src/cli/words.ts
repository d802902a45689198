import { complaints } from "#core/checks/complaints.ts";
import { asItShouldBe, sightOf } from "#core/checks/look.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { english, type Finding, faultText, type RigFault } from "#core/index.ts";
import { heards } from "#core/listening/heard.ts";
import { whereText } from "#core/words/fault-text.ts";
import { placeText } from "#core/words/move-text.ts";

/** A fault as a sentence without its full stop; what is not on the list with the stretch that it is in. */
export function faultWords({ rig, root }: Model, fault: RigFault): string {
  const text = faultText(english, rig, fault);
  if (!isUnlisted(fault) || rig.positions.length === 1) return text;
  const shared = root.faults.includes(fault);
  return `${text}, in what ${shared ? "all share" : `${placeText(english, rig, fault.place)} alone has`}`;
}

/** What is asked, and where: '2 reader, two knocks' or 'a look at the mixer'. */
export function askedWords({ rig }: Model, asked: Finding["asked"]): string {
  const { byHand, checks } = english;
  switch (asked.check) {
    case "look":
      return byHand.look(placeText(english, rig, asked.place));
    case "twist":
      return byHand.twist(placeText(english, rig, asked.part));
    case "complaint":
      return `${placeText(english, rig, asked.position)}, ${byHand.complaint}`;
    case "continuity":
      return byHand.continuity(placeText(english, rig, asked.part), asked.from, asked.to);
    case "matrix":
      return `${placeText(english, rig, asked.position)}, ${byHand.matrix}`;
    default:
      return `${placeText(english, rig, asked.position)}, ${checks[asked.check].name}`;
  }
}

/** An answer as it was given; all of a list is "can't tell". */
export function answerWords(
  model: Model,
  asked: Finding["asked"],
  question: string,
  given: readonly string[],
): string {
  const all = listFor(model, asked, question);
  if (given.length === 0 || (given.length > 1 && given.length >= all.length)) return "can't tell";
  return given.map((one) => saidWords(model, asked, one)).join(", or ");
}

const listFor = (model: Model, asked: Finding["asked"], question: string): readonly string[] => {
  if (asked.check === "look")
    return model.looks.find(({ place }) => place === asked.place)?.answers ?? [];
  return "position" in asked && asked.check !== "matrix"
    ? (questionsOf(asked).find(({ name }) => name === question)?.answers ?? [])
    : [];
};

/** One answer in words. */
function saidWords(model: Model, asked: Finding["asked"], answer: string): string {
  if (asked.check === "look") return sightWords(model, answer);
  const complaint = complaints.find((one) => one === answer);
  if (asked.check === "complaint" && complaint !== undefined)
    return english.complaints.said[complaint];
  const heard = heards.find((one) => one === answer);
  return heard === undefined ? answer : english.heard[heard];
}

/** What the eye saw, and where. */
function sightWords({ rig, branches }: Model, answer: string): string {
  if (answer === asItShouldBe) return english.asItShouldBe;
  const fault = branches
    .flatMap(({ faults }) => faults)
    .find((one) => one.seen && sightOf(one) === answer);
  if (fault === undefined) return answer;
  return `${english.faults[fault.name].seen} (${whereText(english, rig, fault)})`;
}

/** A sentence, from one without its capital and full stop. */
export const sentence = (text: string): string =>
  `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** A probability as people say it: so many in a hundred, never none and never all. */
export const inHundred = (probability: number): string =>
  probability < 0.01
    ? "less than 1 in 100"
    : `${Math.min(99, Math.round(probability * 100))} in 100`;
