import { caseText } from "#core/session/case.ts";
import type { Listed, Unread } from "#storage/store.ts";
import { localDay } from "./local-day.ts";
import { saveText } from "./save-text.ts";
import { begunAt } from "./use-sessions.ts";

/** Hands a session over as a file. The number of the bench stands in it only where that was asked for. */
export function saveSession(one: Listed, name: string, now: number, bench: boolean): void {
  const { session, log, seed } = one;
  const number = bench && seed !== undefined ? { bench: seed } : {};
  const text = caseText(log, { id: session, written: now, ...number });
  saveText(fileName(name, begunAt(log)), "application/json", text);
}

/** The same of a session that cannot be understood: every entry as it lies there, for whoever can. */
export function saveUnread({ session, entries }: Unread, name: string, now: number): void {
  const text = caseText(entries, { id: session, written: now });
  saveText(fileName(name, now), "application/json", text);
}

/** A name that every disk takes. */
const fileName = (name: string, at: number): string => {
  const plain = name.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "session";
  return `${plain} ${localDay(at)}.json`;
};
