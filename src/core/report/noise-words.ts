import type { Noticed } from "#core/checks/finding.ts";
import { answersTo, type Noise, type NoiseAnswer, type Trial } from "#core/checks/noise.ts";
import type { Cause } from "#core/noises/cause.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { Language } from "#core/words/language.ts";
import { placeName, seatName } from "./names.ts";

/** Where a hand or an ear goes: a seat, a socket where a box has several, else the part. */
function whereOf(language: Language, rig: Rig, at: Trial | Cause): string {
  if ("position" in at) return seatName(rig, at.position);
  if (!("part" in at)) return "";
  return placeName(language, rig, "socket" in at ? `${at.part}, ${at.socket}` : at.part);
}

/** What to do: sentences. */
export const trialWords = (language: Language, rig: Rig, trial: Trial, noise: Noise): string =>
  language.noises.trials[trial.try](whereOf(language, rig, trial), noise);

/** What is asked once it is done. */
export function trialQuestion({ noises }: Language, { try: name }: Trial, noise: Noise): string {
  const answers = answersTo(name);
  if (answers.includes("there too")) return noises.thereToo[noise];
  return answers.includes("gone") ? noises.becomes[noise] : noises.withHand[noise];
}

/** Where a noise comes in: a sentence without its full stop. */
export const causeWords = (language: Language, rig: Rig, cause: Cause, noise: Noise): string =>
  language.noises.causes[cause.cause](whereOf(language, rig, cause), noise);

/** What was tried, and where: '2 reader, hiss, the knob of the mixer, phones down'. */
export function triedWords(
  language: Language,
  rig: Rig,
  { position, noise, trial }: Noticed["asked"],
): string {
  const { noises, report } = language;
  const tried = noises.tried[trial.try](whereOf(language, rig, trial));
  return report.at(seatName(rig, position), report.ofQuestion(noises.named[noise], tried));
}

/** What was tried and what was noticed, in one line. */
export function noticedWords(language: Language, rig: Rig, { asked, results }: Noticed): string {
  const tried = triedWords(language, rig, asked);
  const [given = []] = results;
  if (given.length === 0) return language.report.notPossible(tried);
  const list = answersTo(asked.trial.try);
  const known = list.filter((one) => given.includes(one));
  return language.report.answered(
    tried,
    known.length === 0 || known.length === list.length
      ? language.answers.cannotTell
      : language.report.or(known.map((one) => noiseAnswer(language, one))),
  );
}

/** One answer, in words. */
export const noiseAnswer = ({ noises }: Language, answer: NoiseAnswer): string =>
  noises.answers[answer];
