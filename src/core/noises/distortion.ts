import type { Trial } from "#core/checks/noise.ts";
import { atEars, type Place } from "#core/level/at-ears.ts";
import type { Feed } from "#core/level/stages.ts";
import { below } from "#core/listening/normal.ts";
import type { Random } from "#core/units/random.ts";
import type { Decibels } from "#core/units/units.ts";
import { boxAt, byPlace } from "./by-place.ts";
import type { Cause } from "./cause.ts";
import { anywhere, draws, eachDraw, normal } from "./draws.ts";
import { beforeKnob, behindKnob, inProgramme, type Way } from "./way.ts";
import { gone, inOrder, less, mixed, type Shares, same, type World } from "./world.ts";

/** How loud programmes are against full scale, and how much they differ. Common practice, no source. */
const loud = { level: -15, spread: 4, most: -6 } as const;

/** Peaks are heard as rough once so much of them is cut, and how much that differs. Common practice, no source. */
const cut = { heard: 1, spread: 2 } as const;

/** A knob is turned down, or the source, by so much. */
const down: Decibels = 12;

/** Odds in 10,000 of what is rough in itself, and of gear set so that something is cut. Common practice, no source. */
const odds = { programme: 60, driver: 40, cut: 800 } as const;

/** What is cut first, over gear drawn again and again from what is usual; a torn driver; and what is rough in the programme. */
export function distortionWorlds(way: Way): readonly World[] {
  const own: readonly World[] = [
    {
      cause: { cause: "in the programme" },
      weight: odds.programme,
      meant: (trial) => inOrder(trial, byPlace(way, trial, inProgramme)),
    },
    {
      cause: { cause: "driver torn", part: way.worn },
      weight: odds.driver,
      meant: (trial) => inOrder(trial, ofDriver(way, trial)),
    },
  ];
  return [...own, ...eachDraw(way, anywhere, (feed, random) => worldOf(way, feed, random))];
}

/** A torn driver rattles the more the louder it is, whatever is turned. */
function ofDriver(way: Way, trial: Trial): Shares {
  if (trial.try === "other headphones") return gone;
  if (trial.try === "knob down") return mixed(0.5, less, same);
  return byPlace(way, trial, beforeKnob(way.boxes.length));
}

function worldOf(way: Way, feed: Feed, random: Random): World {
  const level = Math.min(loud.most, loud.level + loud.spread * normal(random));
  const { tightest } = atEars(feed, { level });
  const chance = below((-tightest.headroom - cut.heard) / cut.spread);
  return {
    cause: causeOf(way, tightest),
    weight: (odds.cut / draws) * chance,
    meant: (trial) => inOrder(trial, ofCut(way, trial, tightest)),
  };
}

function causeOf({ boxes }: Way, { part, at }: Place): Cause {
  const box = boxes.find((one) => one.part === part);
  // What is sent by radio or as numbers is cut where it goes in.
  return at === "input" || box === undefined || box.link
    ? { cause: "input overloaded", part }
    : { cause: "output at its end", part, socket: box.socket };
}

/** Whatever is turned before the place that is cut makes it whole; whatever is turned behind it makes it softer and leaves it rough. */
function ofCut(way: Way, trial: Trial, { part, at, headroom }: Place): Shares {
  const place = at === "input" ? behindKnob(boxAt(way, part) - 1) : behindKnob(boxAt(way, part));
  const whole = below((headroom + down - cut.heard) / cut.spread);
  const better = mixed(whole, gone, less);
  const turned = upTo(way, trial);
  if (turned !== undefined) return place > turned ? better : same;
  if (trial.try === "quieter source")
    return place < behindKnob(way.boxes.length - 1) ? better : same;
  // Others want less, or more.
  if (trial.try === "other headphones" && place === behindKnob(way.boxes.length - 1))
    return mixed(0.3, less, same);
  return byPlace(way, trial, place);
}

const upTo = (way: Way, trial: Trial): number | undefined =>
  trial.try === "knob down" ? beforeKnob(boxAt(way, trial.part)) : undefined;
