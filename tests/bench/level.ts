import { adviceFor, hissOf, levelOf, ruleOfThumb, withKnobs } from "#core/level/advice.ts";
import { type AtEars, atEars } from "#core/level/at-ears.ts";
import { standsOut } from "#core/level/audible.ts";
import type { FigureName } from "#core/level/figures.ts";
import { drawn } from "#core/level/spread.ts";
import { type Feed, feedTo, usualProgramme } from "#core/level/stages.ts";
import { build } from "#core/rig/rig.ts";
import { seeded } from "#core/units/random.ts";
import { oneOf, rigOf } from "./rigs.ts";
import { markdown } from "./tables.ts";

/*
 * `npm run bench:level -- [rigs]`: how often the rule of thumb (the first knob about half, the last makes up) does as well as the numbers, over seeded rigs
 * whose gear is drawn from what is usual.
 */

/** The gear of a way drawn anew, all at once. */
function gear(feed: Feed, normal: () => number): Feed {
  const draw = (name: FigureName, told: Feed["worn"]["sensitivity"]) => ({
    ...told,
    typical: drawn(name, told, normal()),
  });
  return {
    ...feed,
    stages: feed.stages.map((stage) => ({
      ...stage,
      figures: {
        "most volts": draw("most volts", stage.figures["most volts"]),
        gain: draw("gain", stage.figures.gain),
        "input noise": draw("input noise", stage.figures["input noise"]),
        "output noise": draw("output noise", stage.figures["output noise"]),
        "most input volts": draw("most input volts", stage.figures["most input volts"]),
      },
    })),
    worn: { ...feed.worn, sensitivity: draw("sensitivity", feed.worn.sensitivity) },
  };
}

const clean = -0.5;
const isHeard = (now: AtEars): boolean => standsOut(hissOf(now), "quiet room") > 0;

/** One seeded way with more than one knob, and what both make of it. */
function compared(seed: number) {
  const random = seeded(seed * 7919 + 3);
  const rig = rigOf(seed, 8);
  const feed = feedTo(build(rig), oneOf(rig.positions, random).id);
  const knobs = feed?.stages.filter(({ knob }) => knob !== undefined).length ?? 0;
  if (feed === undefined || knobs < 2) return undefined;
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  const own = gear(feed, normal);
  const wanted = 70 + 20 * random();
  const advice = adviceFor(own, usualProgramme, wanted);
  if (advice.short > 0.5) return undefined;
  const thumb = atEars(withKnobs(own, ruleOfThumb(own, usualProgramme, wanted)), usualProgramme);
  return {
    reached: Math.abs(levelOf(thumb) - wanted) < 0.5 && thumb.tightest.headroom > clean,
    more: hissOf(thumb) - hissOf(advice.then),
    heard: [isHeard(advice.then), isHeard(thumb)] as const,
  };
}

function print(count: number): void {
  const all: NonNullable<ReturnType<typeof compared>>[] = [];
  for (let seed = 1; all.length < count; seed += 1) {
    const one = compared(seed);
    if (one !== undefined) all.push(one);
  }
  const part = (is: (one: (typeof all)[number]) => boolean): string =>
    `${((100 * all.filter(is).length) / all.length).toFixed(1)} %`;
  console.log(
    markdown(
      [`${all.length} ways of two knobs and more`, "of them"],
      [
        ["the rule reaches the level with no peak cut", part(({ reached }) => reached)],
        [
          "and its hiss is within 1 dB of the least",
          part(({ reached, more }) => reached && more < 1),
        ],
        ["within 3 dB", part(({ reached, more }) => reached && more < 3)],
        ["within 6 dB", part(({ reached, more }) => reached && more < 6)],
        ["hiss heard in a quiet room, knobs by the numbers", part(({ heard }) => heard[0])],
        ["by the rule", part(({ heard }) => heard[1])],
        [
          "both heard or both not",
          part(({ heard: [numbers, rule], reached }) => reached && numbers === rule),
        ],
      ],
    ),
  );
}

print(Number(process.argv[2] ?? 500));
