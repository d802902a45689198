import type { Log } from "#core/session/log.ts";
import type { Trouble } from "#storage/shelf.ts";
import type { Notice } from "#ui/words/notice.ts";

/** What a change does to the log. */
export function changeOf(before: Log, after: Log): "none" | "more" | "another" {
  if (after === before) return "none";
  return after[0] === before[0] ? "more" : "another";
}

/** Whether all that was added says what the session is called, or who does it. */
export const namesOnly = (before: Log, after: Log): boolean =>
  changeOf(before, after) === "more" &&
  after.slice(before.length).every(({ entry }) => entry === "titled");

/** What is said where something could not be kept. */
const troubleNotice: Readonly<Record<Exclude<Trouble, "taken">, Notice>> = {
  forbidden: "not kept",
  full: "full",
  blocked: "blocked",
  newer: "newer",
  failed: "failed",
};

/** What to say as long as something is not kept; what another tab wrote is said once. */
export function standing(troubles: readonly Trouble[]): Notice | undefined {
  const [first] = troubles.flatMap((one) => (one === "taken" ? [] : [troubleNotice[one]]));
  return first;
}

/** What is over once everything is kept. */
const about: readonly Notice[] = [...Object.values(troubleNotice), "taken", "late"];

/** What to say after everything was tried to be written, where something was said before. */
export function noticeAfter(troubles: readonly Trouble[], said?: Notice): Notice | undefined {
  const over = said !== undefined && about.includes(said);
  return (troubles.includes("taken") ? "taken" : standing(troubles)) ?? (over ? undefined : said);
}

/** What to say of what was found: why it could not be read, or that some of it, or all, was not understood. */
export function noticeOf(unread: number, some: boolean, trouble?: Trouble): Notice | undefined {
  if (trouble !== undefined && trouble !== "taken") return troubleNotice[trouble];
  if (unread === 0) return undefined;
  return some ? "mended" : "dropped";
}
