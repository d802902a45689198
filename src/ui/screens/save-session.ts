import { caseText } from "#core/session/case.ts";
import type { Listed, Unread } from "#storage/store.ts";
import { begunAt } from "./use-sessions.ts";

/** Hands a session over as a file. The number of the bench stands in it only where that was asked for. */
export function saveSession(one: Listed, name: string, now: number, bench: boolean): void {
  const { session, log, seed } = one;
  const number = bench && seed !== undefined ? { bench: seed } : {};
  const text = caseText(log, { id: session, written: now, ...number });
  handOver(text, fileName(name, begunAt(log)));
}

/** The same of a session that cannot be understood: every entry as it lies there, for whoever can. */
export function saveUnread({ session, entries }: Unread, name: string, now: number): void {
  handOver(caseText(entries, { id: session, written: now }), fileName(name, now));
}

function handOver(text: string, name: string): void {
  const file = new Blob([text], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** A name that every disk takes. */
const fileName = (name: string, at: number): string => {
  const plain = name.replace(/[^\p{L}\p{N} ._-]/gu, "").trim() || "session";
  return `${plain} ${new Date(at).toISOString().slice(0, 10)}.json`;
};
