import { type Asked, isAnswered, isNoticed, type Results } from "#core/checks/finding.ts";
import { questionsOf } from "#core/diagnosis/evidence.ts";
import type { Model } from "#core/diagnosis/model.ts";
import type { Position } from "#core/rig/rig.ts";
import type { Entry, Log } from "#core/session/log.ts";
import type { Language } from "#core/words/language.ts";
import { movedText } from "#core/words/move-text.ts";
import { answerWords, askedWords } from "./asked-words.ts";
import { doText } from "./do-text.ts";
import { seatName } from "./names.ts";
import { noticedWords } from "./noise-words.ts";

/** What a finding or a move said, in one line; of a position that is not drawn any more by the name it had. */
export const toldWords = (language: Language, model: Model, entry: Entry, log: Log): string =>
  saidBy(language, withFormer(model, log), entry);

function withFormer(model: Model, log: Log): Model {
  const { rig } = model;
  const drawn = new Map<string, Position>();
  for (const one of log)
    if (one.entry === "drawing")
      for (const position of one.rig.positions) drawn.set(position.id, position);
  const former = [...drawn.values()].filter((one) =>
    rig.positions.every(({ id }) => id !== one.id),
  );
  return { ...model, rig: { ...rig, positions: [...rig.positions, ...former] } };
}

function saidBy(language: Language, model: Model, entry: Entry): string {
  const { report } = language;
  if (entry.entry === "move") return movedText(language, model.rig, entry.move);
  if (entry.entry === "cannot") return report.notPossible(doText(language, model, entry.move));
  if (entry.entry === "absent") return report.nobodyAt(seatName(model.rig, entry.position));
  if (entry.entry !== "finding") return entry.entry;
  const { finding } = entry;
  if (isNoticed(finding)) return noticedWords(language, model.rig, finding);
  if (!isAnswered(finding)) return askedWords(language, model, finding.asked);
  const { asked, results, otherTimes } = finding;
  const words = (some: Results) =>
    report.inTurn(
      some.map((given, at) => answerWords(language, model, asked, nameOf(asked, at), given)),
    );
  const told = report.answered(askedWords(language, model, asked), words(results));
  return otherTimes ? report.otherTimes(told, words(otherTimes)) : told;
}

/** The name of one of the questions that were asked. */
const nameOf = (asked: Asked, at: number): string =>
  "position" in asked ? (questionsOf(asked)[at]?.name ?? "") : asked.check;
