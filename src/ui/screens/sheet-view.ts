import { rigIn, type Said, titleOf } from "#core/session/log.ts";
import { entered, type Page } from "./page.ts";

/** The session as it is handed over. */
export interface SheetView {
  readonly screen: "sheet";
  /** It is to be printed, or saved as a table, once it says all that was entered. */
  readonly take?: "paper" | "table";
}

type Title = Pick<Extract<Said, { entry: "titled" }>, "name" | "who">;

/** A session named or signed; the same page where it is called so already. */
export function titled(page: Page, { name, who }: Title, at: number): Page {
  const is = titleOf(page.log);
  const unnamed = rigIn(page.log)?.name ?? "";
  const named = name !== undefined && (name || unnamed) !== (is.name ?? unnamed);
  const signed = who !== undefined && who !== (is.who ?? "");
  if (!named && !signed) return page;
  const said = { ...(named ? { name } : {}), ...(signed ? { who } : {}) };
  return entered(page, { entry: "titled", ...said }, at);
}
