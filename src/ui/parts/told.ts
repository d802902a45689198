import { type Asked, type Finding, isAnswered, type Results } from "#core/checks/finding.ts";
import { asItShouldBe } from "#core/checks/look.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { clientId } from "#core/rig/rig.ts";
import type { Entry } from "#core/session/log.ts";
import { english } from "#core/words/english.ts";
import { movedText } from "#core/words/move-text.ts";
import { doText } from "./do-text.ts";
import { seenWords } from "./look-answers.ts";
import { placeName, seatName } from "./names.ts";

/** The fault of an id, where the rig can have it. */
export const faultById = (model: Model, id: string) =>
  model.branches.flatMap(({ faults }) => faults).find((fault) => fault.id === id);

/** A place with what is asked there: '2 reader, two knocks' or 'a look at the mixer'. */
export function askedWords({ rig }: Model, asked: Finding["asked"]): string {
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

/** How many answers a question has, where 'all of them' is 'can't tell'; of a look none is. */
function answersTo(asked: Asked, at: number): number {
  if (asked.check === "twist") return twistAnswers.length;
  return "position" in asked ? (questionsOf(asked)[at]?.answers.length ?? 0) : 0;
}

/** An answer as it was given; all of a list is 'can't tell'. */
export function answerWords(model: Model, given: readonly string[], all: number): string {
  if (given.length > 1 && given.length === all) return "can't tell";
  if (given.length > 1 && all > 0) return given.join(", or ");
  const [first = asItShouldBe] = given;
  const fault = faultById(model, first);
  if (fault !== undefined) return seenWords(model.rig, fault);
  return first === asItShouldBe ? english.asItShouldBe : first;
}

/** What a finding or a move said, in one line. */
export function toldWords(model: Model, entry: Entry): string {
  if (entry.entry === "move") return movedText(english, model.rig, entry.move);
  if (entry.entry === "cannot")
    return `not possible here: ${lower(doText(model, entry.move, false))}`;
  if (entry.entry !== "finding") return entry.entry;
  const { finding } = entry;
  if (!isAnswered(finding)) return askedWords(model, finding.asked);
  const words = (results: Results) =>
    results
      .map((given, at) => answerWords(model, given, answersTo(finding.asked, at)))
      .join(", then ");
  const sometimes = finding.otherTimes ? `; at other times ${words(finding.otherTimes)}` : "";
  return `${askedWords(model, finding.asked)}: ${words(finding.results)}${sometimes}`;
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
