import { balanceOf } from "#core/checks/balance.ts";
import { complaints } from "#core/checks/complaints.ts";
import { heards } from "#core/listening/heard.ts";
import type { Language } from "./language.ts";

/** One answer of a closed list, by what it is called in the core. */
export function answerText({ heard, complaints: { said }, answers }: Language, answer: string) {
  const place = heards.find((one) => one === answer);
  if (place !== undefined) return heard[place];
  const complaint = complaints.find((one) => one === answer);
  if (complaint !== undefined) return said[complaint];
  const right = balanceOf(answer);
  if (right !== undefined) return answers.middleAt(right);
  return Object.hasOwn(answers.said, answer)
    ? answers.said[answer as keyof typeof answers.said]
    : answer;
}
