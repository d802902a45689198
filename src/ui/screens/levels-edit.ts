import { partSet } from "#core/drawing/changing.ts";
import type { Edited } from "#core/drawing/edited.ts";
import type { Rig } from "#core/rig/rig.ts";
import { rigIn } from "#core/session/log.ts";
import { entered, type Page } from "./page.ts";

/** One thing said of a part; forgotten where `value` is left out. */
export interface Put {
  readonly part: string;
  readonly name: string;
  readonly value: number | string | undefined;
}

/** All of them said of a rig, or why it cannot be so. */
const allSet = (rig: Rig, all: readonly Put[]): Edited =>
  all.reduce<Edited>(
    (so, { part, name, value }) => ("refusal" in so ? so : partSet(so.rig, part, name, value)),
    { rig },
  );

const isSaid = (rig: Rig, { part, name, value }: Put): boolean =>
  rig.parts.find(({ id }) => id === part)?.settings?.[name] === value;

/** Numbers and knobs entered as one drawing; where that is refused nothing is, and why is said. */
export function put(page: Page, all: readonly Put[], at: number): Page {
  const rig = rigIn(page.log);
  const news = rig ? all.filter((one) => !isSaid(rig, one)) : [];
  if (rig === undefined || news.length === 0) return page;
  const edited = allSet(rig, news);
  if ("refusal" in edited) return refusing(page, edited.refusal);
  return refusing(entered(page, { entry: "drawing", rig: edited.rig }, at), undefined);
}

const refusing = (
  page: Page,
  refused: Extract<Edited, { refusal: unknown }>["refusal"] | undefined,
) => (page.view.screen === "levels" ? { ...page, view: { ...page.view, refused } } : page);

/** The rig drawn otherwise. */
export const redrawn = (page: Page, rig: Rig, at: number): Page =>
  refusing(entered(page, { entry: "drawing", rig }, at), undefined);
