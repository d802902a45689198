import { caseText } from "#core/session/case.ts";
import type { Listed } from "#storage/store.ts";
import { saveText } from "./save-text.ts";
import { begunAt } from "./use-sessions.ts";

/** Hands a session over as a file. The number of the bench stands in it only where that was asked for. */
export function saveSession(one: Listed, name: string, now: number, bench: boolean): void {
  const { session, log, seed } = one;
  const about = {
    id: session,
    written: now,
    ...(bench && seed !== undefined ? { bench: seed } : {}),
  };
  saveText(fileName(name, begunAt(log)), "application/json", caseText(log, about));
}

/** A name that every disk takes. */
const fileName = (name: string, at: number): string => {
  const plain = name.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "session";
  return `${plain} ${new Date(at).toISOString().slice(0, 10)}.json`;
};
