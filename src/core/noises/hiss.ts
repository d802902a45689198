import type { Trial } from "#core/checks/noise.ts";
import { atEars } from "#core/level/at-ears.ts";
import { type Room, standsOut } from "#core/level/audible.ts";
import type { Feed, Programme, Stage } from "#core/level/stages.ts";
import { below } from "#core/listening/normal.ts";
import type { Random } from "#core/units/random.ts";
import type { Decibels } from "#core/units/units.ts";
import { byPlace, silencedUpTo } from "./by-place.ts";
import type { Cause } from "./cause.ts";
import { aboutHalf, eachDraw, normal } from "./draws.ts";
import { beforeKnob, behindKnob, inProgramme, type Way } from "./way.ts";
import { gone, inOrder, type Shares, type World } from "./world.ts";

/** One thing that hisses, by where it comes in and what it makes at the ear: power of white noise of nought decibels of sound pressure. */
interface Source {
  readonly cause: Cause;
  readonly place: number;
  readonly power: number;
}

/** A programme's own noise below its mean, as microphones and old recordings leave it. Common practice, no source. */
const programmeNoise = { below: 66, spread: 10 } as const;

/** The rooms that somebody listens in. */
const rooms: readonly Room[] = ["studio", "quiet room", "room with people"];

const programme: Programme = { level: -18 };

/** By so many decibels hiss stands out when somebody speaks of it, and how much that differs from one to the next. Common practice, no source. */
const spokenOf = { above: 8, spread: 4 } as const;

/** Gear is drawn again and again from what is usual; each time what hisses most is the cause, and it counts by how likely somebody speaks of it. */
export const hissWorlds = (way: Way): readonly World[] =>
  eachDraw(way, aboutHalf, (feed, random) => worldOf(way, feed, random));

function worldOf(way: Way, feed: Feed, random: Random): World {
  const sources = sourcesOf(way, feed, random);
  const room = rooms[Math.floor(random() * rooms.length)] ?? "quiet room";
  const all = levelOf(sources);
  const [most] = sources.toSorted((a, b) => b.power - a.power);
  return {
    cause: most?.cause ?? { cause: "in the programme" },
    gear: feed,
    weight: below((standsOut(all, room) - spokenOf.above) / spokenOf.spread),
    meant: (trial) =>
      inOrder(trial, noticed({ way, sources, room, all }, trial, most?.place ?? inProgramme)),
  };
}

const levelOf = (sources: readonly Source[]): Decibels =>
  10 * Math.log10(Math.max(1e-12, ...[sources.reduce((sum, { power }) => sum + power, 0)]));

interface Hissing {
  readonly way: Way;
  readonly sources: readonly Source[];
  readonly room: Room;
  readonly all: Decibels;
}

/** A change of so much is noticed half of the time by somebody who turns a knob and listens, and how much that differs. Common practice, no source. */
const change = { noticed: 1.5, spread: 0.75 } as const;
/** What is left is called gone by how far it stands out. */
const hush: Decibels = 1.5;

function noticed({ way, sources, room, all }: Hissing, trial: Trial, place: number): Shares {
  const upTo = silencedUpTo(way, trial);
  if (upTo === undefined) return byRadio(trial, way, place) ?? byPlace(way, trial, place);
  const left = levelOf(sources.filter((one) => one.place > upTo));
  const heard = below((all - left - change.noticed) / change.spread);
  const silent = heard * below(-standsOut(left, room) / hush);
  return {
    gone: 0.99 * silent,
    less: 0.99 * (heard - silent),
    "the same": 0.99 * (1 - heard),
    more: 0.01,
  };
}

const byRadio = (trial: Trial, { boxes }: Way, place: number): Shares | undefined =>
  trial.try === "nearer the sender" && boxes[(place - 1) / 2]?.link ? gone : undefined;

/** What each noise makes at the louder ear by itself. */
function sourcesOf(way: Way, feed: Feed, random: Random): readonly Source[] {
  const alone = (at: number, name: Noisy) => powerAt(onlyNoise(feed, at, name));
  const level = Math.max(...atEars(feed, programme).ears.map((ear) => ear.level));
  const rushing = level - programmeNoise.below + programmeNoise.spread * normal(random);
  return [
    { cause: { cause: "in the programme" }, place: inProgramme, power: 10 ** (rushing / 10) },
    ...feed.stages.flatMap((_, at): readonly Source[] => [
      {
        cause: causeOf(way, at, "input noise"),
        place: placeOf(way, at, "input noise"),
        power: alone(at, "input noise"),
      },
      {
        cause: causeOf(way, at, "output noise"),
        place: behindKnob(at),
        power: alone(at, "output noise"),
      },
    ]),
  ];
}

type Noisy = "input noise" | "output noise";

/** A link's noise is that of its radio or its numbers, as far as anybody can tell. */
const placeOf = ({ boxes }: Way, at: number, name: Noisy): number =>
  name === "output noise" || boxes[at]?.link ? behindKnob(at) : beforeKnob(at);

function causeOf({ boxes }: Way, at: number, name: Noisy): Cause {
  const box = boxes[at];
  if (box === undefined) return { cause: "in the programme" };
  const { part, socket, link, knob } = box;
  if (link) return { cause: "radio link", part };
  if (!knob) return { cause: "the box itself", part };
  if (name === "input noise") return { cause: "before the knob", part, socket };
  const last = boxes[at + 1] === undefined;
  return { cause: last ? "behind the last knob" : "behind the knob", part, socket };
}

const silent = (stage: Stage, kept: Noisy | undefined): Stage => {
  const off = (name: Noisy) =>
    name === kept ? stage.figures[name] : { ...stage.figures[name], typical: 0 };
  return {
    ...stage,
    figures: {
      ...stage.figures,
      "input noise": off("input noise"),
      "output noise": off("output noise"),
    },
  };
};

const onlyNoise = (feed: Feed, at: number, name: Noisy): Feed => ({
  ...feed,
  stages: feed.stages.map((stage, index) => silent(stage, index === at ? name : undefined)),
});

const powerAt = (feed: Feed): number =>
  10 ** (Math.max(...atEars(feed, programme).ears.map(({ hiss }) => hiss)) / 10);
