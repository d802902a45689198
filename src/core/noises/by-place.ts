import type { Trial } from "#core/checks/noise.ts";
import { beforeKnob, behindKnob, inProgramme, sharedUpTo, type Way } from "./way.ts";
import { gone, notThere, type Shares, same, still, thereToo } from "./world.ts";

/** The box that a trial has a hand on. */
export const boxAt = ({ boxes }: Way, part: string): number =>
  boxes.findIndex((box) => box.part === part);

/** The last place on the way that a trial silences; nothing where it silences none. */
export function silencedUpTo(way: Way, trial: Trial): number | undefined {
  switch (trial.try) {
    case "programme stopped":
      return inProgramme;
    case "knob down":
      return beforeKnob(boxAt(way, trial.part));
    case "feed out":
      return behindKnob(boxAt(way, trial.part) - 1);
    default:
      return undefined;
  }
}

/** What is noticed of a noise that comes in at a place, by the place alone: it goes with whatever silences the way from there upwards. */
export function byPlace(way: Way, trial: Trial, place: number): Shares {
  const upTo = silencedUpTo(way, trial);
  if (upTo !== undefined) return place <= upTo ? gone : same;
  switch (trial.try) {
    case "elsewhere":
      return place <= sharedUpTo(way, trial.position) ? thereToo : notThere;
    case "recording":
      return place === inProgramme ? thereToo : notThere;
    case "lead bent":
    case "plugs turned":
    case "knob to and fro":
      return still;
    default:
      return same;
  }
}
