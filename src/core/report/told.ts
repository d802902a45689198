import { type Asked, isAnswered, type Results } from "#core/checks/finding.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Entry } from "#core/session/log.ts";
import { english } from "#core/words/english.ts";
import { movedText } from "#core/words/move-text.ts";
import { answerWords, askedWords } from "./asked-words.ts";
import { doText } from "./do-text.ts";
import { seatName } from "./names.ts";

/** What a finding or a move said, in one line. */
export function toldWords(model: Model, entry: Entry): string {
  if (entry.entry === "move") return movedText(english, model.rig, entry.move);
  if (entry.entry === "cannot") return `not possible here: ${lower(doText(model, entry.move))}`;
  if (entry.entry === "absent") return `nobody at ${seatName(model.rig, entry.position)}`;
  if (entry.entry !== "finding") return entry.entry;
  const { finding } = entry;
  if (!isAnswered(finding)) return askedWords(model, finding.asked);
  const { asked, results, otherTimes } = finding;
  const words = (some: Results) =>
    some.map((given, at) => answerWords(model, asked, nameOf(asked, at), given)).join(", then ");
  const sometimes = otherTimes ? `; at other times ${words(otherTimes)}` : "";
  return `${askedWords(model, asked)}: ${words(results)}${sometimes}`;
}

/** The name of one of the questions that were asked. */
const nameOf = (asked: Asked, at: number): string =>
  "position" in asked ? (questionsOf(asked)[at]?.name ?? "") : asked.check;

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
