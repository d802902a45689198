import { caseText } from "#core/session/case.ts";
import type { Listed } from "#storage/store.ts";
import { begunAt } from "./use-sessions.ts";

/** Hands a session over as a file. The number of the bench stands in it only where that was asked for. */
export function saveSession(one: Listed, name: string, now: number, bench: boolean): void {
  const { session, log, seed } = one;
  const about = {
    id: session,
    written: now,
    ...(bench && seed !== undefined ? { bench: seed } : {}),
  };
  const file = new Blob([caseText(log, about)], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = fileName(name, begunAt(log));
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A name that every disk takes. */
const fileName = (name: string, at: number): string => {
  const plain = name.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "session";
  return `${plain} ${new Date(at).toISOString().slice(0, 10)}.json`;
};
