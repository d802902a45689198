import type { Edited } from "#core/drawing/edited.ts";
import { partRemoved, positionRemoved } from "#core/drawing/removing.ts";
import { unplugged } from "#core/drawing/replugging.ts";
import type { BuiltRig, Rig } from "#core/rig/rig.ts";
import { rigIn } from "#core/session/log.ts";
import { keyOf, type Meant } from "#ui/parts/rig-keys.ts";
import { entered, type Page } from "./page.ts";
import type { RigDoing, RigView } from "./rig-view.ts";
import { stepped } from "./stepped.ts";

/** The rig that is drawn, and what a press may do to it. */
export interface AtRig {
  readonly rig: Rig;
  readonly built: BuiltRig;
  /** A thing into the hand, and what is done to it. */
  readonly choose: (meant: Meant, doing?: RigDoing) => void;
  /** The thing in hand out of it again. */
  readonly leave: (meant: Meant) => void;
  /** A field says for itself why it is not understood. */
  readonly refuseNoMore: () => void;
  /** Draws the rig anew; the focus goes to a thing of it, or to the heading. */
  readonly edit: (how: (rig: Rig) => Edited, focus?: Meant) => void;
}

/** An edit entered as a drawing of its own; where it is refused, what was in hand stays there, with why. */
export function drew(page: Page, how: (rig: Rig) => Edited, at: number, focus?: Meant): Page {
  const rig = rigIn(page.log);
  if (rig === undefined || page.view.screen !== "rig") return page;
  const edited = how(rig);
  if ("refusal" in edited)
    return {
      ...page,
      view: {
        ...page.view,
        refused: edited.refusal,
        did: undefined,
        grown: undefined,
        focus: undefined,
      },
    };
  const view: RigView = { screen: "rig", focus: focus ?? "heading", grown: edited.grown };
  const next = edited.rig === rig ? page : entered(page, { entry: "drawing", rig: edited.rig }, at);
  return { ...next, view };
}

/** The last drawing taken back, or the last one that was taken back put in force again. */
export function steppedBack(page: Page, way: "undone" | "redone", at: number): Page {
  const next = stepped(page, way, at);
  return next === page || page.view.screen !== "rig"
    ? page
    : { ...next, view: { screen: "rig", did: way } };
}

/** A thing in hand, and what is done to it. */
export const inHand = (page: Page, chosen: Meant, doing?: RigDoing): Page =>
  page.view.screen === "rig" ? { ...page, view: { screen: "rig", chosen, doing } } : page;

/** Why the last edit was not made is said no more: something else is. */
export const unrefused = (page: Page): Page =>
  page.view.screen === "rig" && page.view.refused !== undefined
    ? { ...page, view: { ...page.view, refused: undefined } }
    : page;

/** Nothing in hand any more. */
export const letGo = (page: Page, focus: Meant): Page =>
  page.view.screen === "rig" ? { ...page, view: { screen: "rig", focus } } : page;

/** What 'remove' does to a thing: a plug is pulled out. */
export function removal(rig: Rig, meant: Meant): Edited {
  if ("position" in meant) return positionRemoved(rig, meant.position);
  if ("part" in meant) return partRemoved(rig, meant.part);
  return "end" in meant ? unplugged(rig, meant.end) : { rig };
}

/** The element that shows a thing. */
export const elementOf = (meant: Meant): HTMLElement | null =>
  document.querySelector(
    `[data-thing="${keyOf(meant).replace(/["\\]/g, "\\$&").replaceAll("\n", "\\a ")}"]`,
  );

/** The focus to a thing that is drawn; else to the heading, and what is looked at stays in sight. */
export function focusOn(meant: Meant | "heading"): void {
  const thing = meant === "heading" ? null : elementOf(meant);
  if (thing !== null) thing.focus();
  else document.querySelector<HTMLElement>("h1")?.focus({ preventScroll: true });
}
