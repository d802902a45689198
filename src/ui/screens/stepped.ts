import { lastDrawing, lastUndone } from "#core/session/log.ts";
import { entered, type Page } from "./page.ts";

/** The last drawing taken back, or the last one that was taken back put in force again; the same page where there is none. */
export function stepped(page: Page, way: "undone" | "redone", at: number): Page {
  const entry = way === "undone" ? lastDrawing(page.log) : lastUndone(page.log);
  return entry === undefined ? page : entered(page, { entry: "taken back", taken: entry.id }, at);
}
