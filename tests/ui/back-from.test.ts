import { describe, expect, test } from "vitest";
import { methods } from "#core/proving/choice.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { backFrom, stepsBack, stepsIn } from "#ui/screens/back-from.ts";
import { goingOn, type View } from "#ui/screens/page.ts";

const start: View = { screen: "start" };
const board: View = { screen: "board" };
const position: View = { screen: "position", position: "position 1" };

/** One of every screen: what is missing here the compiler names. */
const everyScreen: { readonly [Screen in View["screen"]]: Extract<View, { screen: Screen }> } = {
  start: { screen: "start" },
  board: { screen: "board" },
  rig: { screen: "rig" },
  levels: { screen: "levels", position: "position 1" },
  noise: { screen: "noise", position: "position 1" },
  position: { screen: "position", position: "position 1" },
  "hands up": { screen: "hands up" },
  curtain: { screen: "curtain" },
  plan: { screen: "plan" },
  listen: { screen: "listen", rig: straightIn },
  sheet: { screen: "sheet" },
  words: { screen: "words" },
  complaint: { screen: "complaint", told: {} },
  "sound out": { screen: "sound out", from: position },
  prove: { screen: "prove", lead: {} },
  sounds: { screen: "sounds" },
  flex: { screen: "flex" },
  sessions: { screen: "sessions" },
  measure: { screen: "measure" },
  training: { screen: "training" },
};

describe("the way back", () => {
  test.for(Object.values(everyScreen))("from $screen it comes to the first screen", (view) => {
    const steps = stepsIn(view);
    expect(stepsBack(view, steps)).toEqual(start);
    if (view.screen !== "start") expect(stepsIn(backFrom(view))).toBe(steps - 1);
  });

  test("a position lies behind the board, and what was opened from it behind it", () => {
    expect(backFrom(position)).toEqual(board);
    expect(backFrom(board)).toEqual(start);
    expect(backFrom({ screen: "noise", position: "position 1" })).toEqual(position);
    const words: View = { screen: "words", from: { screen: "sound out", from: position } };
    expect(stepsIn(words)).toBe(4);
    expect(stepsBack(words, 2)).toEqual(position);
  });

  test("a lead that is opened again is asked about as far as it was told", () => {
    for (const by of methods) {
      const view = goingOn(leadRig({ kind: "TRS to two RCA lead", by }));
      expect(stepsIn(view), by).toBe(5);
      expect(backFrom(view)).toEqual({
        screen: "prove",
        lead: { one: "TRS", other: "two RCA", kind: "TRS to two RCA lead" },
      });
      expect(stepsBack(view, 2)).toEqual({
        screen: "prove",
        lead: { one: "TRS", other: "two RCA" },
      });
    }
  });

  test("of what was told piece by piece the last piece is taken back first", () => {
    const compared: View = { screen: "sessions", compare: ["one", "other"] };
    expect(backFrom(compared)).toEqual({ screen: "sessions" });
    expect(stepsIn(compared)).toBe(2);
  });
});
