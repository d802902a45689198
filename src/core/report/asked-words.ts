import { complaints } from "#core/checks/complaints.ts";
import type { Finding } from "#core/checks/finding.ts";
import { asItShouldBe, sightOf } from "#core/checks/look.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { heards } from "#core/listening/heard.ts";
import { clientId } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import { seenWords } from "./fault-words.ts";
import { placeName, seatName } from "./names.ts";

type Asked = Finding["asked"];

/** What is asked, and where: '2 reader, two knocks' or 'a look at the mixer'. */
export function askedWords({ rig }: Model, asked: Asked): string {
  const { byHand, checks } = english;
  switch (asked.check) {
    case "look":
      return (asked.place === clientId ? byHand.ask : byHand.look)(placeName(rig, asked.place));
    case "twist":
      return byHand.twist(placeName(rig, asked.part));
    case "continuity":
      return byHand.continuity(placeName(rig, asked.part), asked.from, asked.to);
    case "complaint":
      return `${seatName(rig, asked.position)}, ${byHand.complaint}`;
    case "matrix":
      return `${seatName(rig, asked.position)}, ${byHand.matrix}`;
    default:
      return `${seatName(rig, asked.position)}, ${checks[asked.check].name}`;
  }
}

/** What was answered to one question; all of its list is 'can't tell'. */
export function answerWords(
  model: Model,
  asked: Asked,
  question: string,
  given: readonly string[],
): string {
  const all = listOf(model, asked, question);
  if (given.length === 0 || (given.length > 1 && given.length >= all.length)) return "can't tell";
  return given.map((one) => saidWords(model, asked, one)).join(", or ");
}

/** Every answer there is to a question. */
function listOf(model: Model, asked: Asked, question: string): readonly string[] {
  if (asked.check === "look")
    return model.looks.find(({ place }) => place === asked.place)?.answers ?? [];
  if (asked.check === "twist") return twistAnswers;
  if (asked.check === "matrix" || asked.check === "continuity") return [];
  return questionsOf(asked).find(({ name }) => name === question)?.answers ?? [];
}

/** One answer. */
function saidWords(model: Model, asked: Asked, answer: string): string {
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
  return fault === undefined ? answer : seenWords(rig, fault);
}
