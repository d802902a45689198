import { rigIn, titleOf } from "#core/session/log.ts";
import type { Listed } from "#storage/store.ts";
import { useWords } from "#ui/words/use-words.ts";
import { begunAt } from "./use-sessions.ts";

/** How a session is called and when it began, in the language chosen. */
export function useNames() {
  const { figures, sessions } = useWords();
  return {
    nameOf: ({ log, seed }: Pick<Listed, "log" | "seed">): string =>
      titleOf(log).name ?? (seed === undefined ? (rigIn(log)?.name ?? "") : sessions.bench),
    dateOf: ({ log }: Pick<Listed, "log">): string => figures.dayAndTime(begunAt(log)),
  };
}
