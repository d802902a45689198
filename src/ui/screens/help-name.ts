import type { Advice } from "#core/diagnosis/advice.ts";
import { derive } from "#core/session/derive.ts";
import type { HelpName } from "#ui/words/help-names.ts";
import type { Page, View } from "./page.ts";

type Several = "position" | "prove";

/** Screens with one question; the compiler wants each new one here. */
const single: { readonly [Screen in Exclude<View["screen"], Several>]: HelpName } = {
  start: "start",
  board: "board",
  "hands up": "hands up",
  curtain: "curtain",
  rig: "rig",
  levels: "levels",
  sessions: "sessions",
  plan: "plan",
  listen: "listen",
  sheet: "sheet",
  words: "words",
  complaint: "complaint",
  noise: "noise",
  "sound out": "sound out",
  sounds: "sounds",
  flex: "flex",
  measure: "measure",
  training: "training",
};

/** Whose question the screen in hand asks. */
export function helpName({ view, log }: Pick<Page, "view" | "log">): HelpName {
  if (view.screen === "prove") return view.lead.by === undefined ? "prove" : "prove reading";
  if (view.screen !== "position") return single[view.screen];
  if (view.microphone !== undefined) return "cups";
  const derived = derive(log);
  if (derived?.state(view.position) === "absent") return "absent";
  const advice = derived?.standing(view.position).advice;
  return advice === undefined ? "asked" : atPosition(advice);
}

function atPosition(advice: Advice): HelpName {
  if (advice.advice !== "ask") return advice.advice;
  const { check } = advice.option.asked;
  return check === "look" || check === "twist" || check === "balance" ? check : "asked";
}
