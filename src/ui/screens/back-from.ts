import { unsaid } from "./complaint-told.ts";
import type { View } from "./page.ts";
import { saidBefore } from "./prove-said.ts";

/** Where the way back leads; of the first screen nowhere but there. */
export function backFrom(view: View): View {
  if (view.screen === "board") return { screen: "start" };
  if ("from" in view && view.from) return view.from;
  if (view.screen === "listen" && view.plan) return { screen: "plan", plan: view.plan };
  return answerBefore(view) ?? { screen: fromStart.includes(view.screen) ? "start" : "board" };
}

const fromStart: readonly View["screen"][] = [
  "start",
  "plan",
  "listen",
  "training",
  "sounds",
  "flex",
  "measure",
  "words",
  "prove",
  "complaint",
  "sessions",
];

/** The same screen with one answer less, where there is one to take away. */
function answerBefore(view: View): View | undefined {
  if (view.screen === "noise") return { screen: "position", position: view.position };
  if (view.screen === "prove") {
    const lead = saidBefore(view.lead);
    return lead && { screen: "prove", lead };
  }
  if (view.screen === "sessions") return view.compare && { screen: "sessions" };
  if (view.screen !== "complaint") return undefined;
  const told = unsaid(view.told);
  return told && { screen: "complaint", told };
}

/** How many steps back the first screen lies. */
export function stepsIn(view: View): number {
  return view.screen === "start" ? 0 : 1 + stepsIn(backFrom(view));
}

/** So many steps back. */
export const stepsBack = (view: View, steps: number): View =>
  steps <= 0 ? view : stepsBack(backFrom(view), steps - 1);
