import type { Log } from "#core/session/log.ts";
import type { Trouble } from "#storage/shelf.ts";
import type { Notice } from "#ui/words/notice.ts";

/** What a change does to the log. */
export function changeOf(before: Log, after: Log): "none" | "more" | "another" | "stale" {
  if (after === before) return "none";
  if (after[0] !== before[0]) return "another";
  const goesOn = after.length > before.length && after[before.length - 1] === before.at(-1);
  return goesOn ? "more" : "stale";
}

/** What is said where something could not be kept. */
export const troubleNotice: Readonly<Record<Exclude<Trouble, "taken">, Notice>> = {
  forbidden: "not kept",
  full: "full",
  blocked: "blocked",
  newer: "newer",
  failed: "failed",
};

/** What is over once something was kept. */
export const about: readonly Notice[] = [...Object.values(troubleNotice), "taken", "late"];

/** What to say of what was found: why it could not be read, or that some of it, or all, was not understood. */
export function noticeOf(unread: number, some: boolean, trouble?: Trouble): Notice | undefined {
  if (trouble !== undefined && trouble !== "taken") return troubleNotice[trouble];
  if (unread === 0) return undefined;
  return some ? "mended" : "dropped";
}
