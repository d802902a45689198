import { rigIn, titleOf } from "#core/session/log.ts";
import type { Listed } from "#storage/store.ts";
import { useWords } from "#ui/words/use-words.ts";
import { begunAt } from "./use-sessions.ts";

/** How a session is called and when it began, in the language chosen. */
export function useNames(tongue: string) {
  const { sessions } = useWords();
  const day = new Intl.DateTimeFormat(tongue === "en" ? "en-GB" : tongue, {
    weekday: "short",
    day: "numeric",
    month: "long",
    year: "numeric",
    hour: "2-digit",
    minute: "2-digit",
  });
  return {
    nameOf: ({ log, seed }: Pick<Listed, "log" | "seed">): string =>
      titleOf(log).name ?? (seed === undefined ? (rigIn(log)?.name ?? "") : sessions.bench),
    dateOf: ({ log }: Pick<Listed, "log">): string => day.format(begunAt(log)),
  };
}
