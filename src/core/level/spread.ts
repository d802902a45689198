import { build, type Rig, wornAt } from "#core/rig/rig.ts";
import {
  type FigureName,
  figureNames,
  inDecibels,
  ohmsOf,
  outputOhms,
  type Usual,
} from "./figures.ts";
import { perVolt } from "./sensitivity.ts";
import type { Feed, Stage } from "./stages.ts";
import { feedTo } from "./stages.ts";
import { ohmsIn } from "./told.ts";

/** A number with what it may be: eight in ten lie between. */
export interface Between {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** A number of gear that nobody told, and the way as it is with another in its place. */
export interface Unknown {
  readonly part: string;
  readonly name: FigureName | "ohms" | "output ohms";
  readonly usual: Usual;
  readonly with: (value: number) => Feed;
}

const figuresOf = figureNames.filter((name) => name !== "sensitivity");

const withStage = (feed: Feed, at: number, stage: Stage): Feed => ({
  ...feed,
  stages: feed.stages.map((one, index) => (index === at ? stage : one)),
});

/** Every number of a way that nobody told, and that may be another. */
export function unknownsOf(rig: Rig, feed: Feed): readonly Unknown[] {
  const ofStages = feed.stages.flatMap((stage, at) =>
    figuresOf.flatMap((name): readonly Unknown[] => {
      const told = stage.figures[name];
      if (told.low === told.high) return [];
      return [
        {
          part: stage.part,
          name,
          usual: told,
          with: (value) =>
            withStage(feed, at, {
              ...stage,
              figures: { ...stage.figures, [name]: { ...told, typical: value } },
            }),
        },
      ];
    }),
  );
  return [...ofStages, ...ofWorn(feed), ...ofOhms(rig, feed)];
}

function ofWorn(feed: Feed): readonly Unknown[] {
  const { part, sensitivity, unit } = feed.worn;
  if (unit === "dB") return [inEitherUnit(feed)];
  if (sensitivity.low === sensitivity.high) return [];
  return [
    {
      part,
      name: "sensitivity",
      usual: sensitivity,
      with: (value) => ({
        ...feed,
        worn: { ...feed.worn, sensitivity: { ...sensitivity, typical: value } },
      }),
    },
  ];
}

/** A sheet that does not say of what may mean either. */
function inEitherUnit(feed: Feed): Unknown {
  const { part, sensitivity, unit, ohms } = feed.worn;
  const { value, low, high } = perVolt(sensitivity.typical, unit, ohms);
  return {
    part,
    name: "sensitivity",
    usual: { typical: value, low, high },
    with: (ofOneVolt) => ({
      ...feed,
      worn: { ...feed.worn, unit: "dB/V", sensitivity: { ...sensitivity, typical: ofOneVolt } },
    }),
  };
}

/** Resistances change the circuits, which are solved again. */
function ofOhms(rig: Rig, feed: Feed): readonly Unknown[] {
  const worn = wornAt(rig, feed.position);
  const last = feed.stages.at(-1)?.part;
  const kindOf = (id: string) => rig.parts.find((part) => part.id === id);
  const usual = ohmsOf(kindOf(worn)?.kind ?? "client");
  const asked = [
    ...(usual === undefined ? [] : [{ part: worn, name: "ohms" as const, usual }]),
    ...(last === undefined
      ? []
      : [{ part: last, name: "output ohms" as const, usual: outputOhms }]),
  ];
  return asked.flatMap(({ part, name, usual: known }) => {
    const told = ohmsIn(kindOf(part)?.settings, name, known);
    if (told.told) return [];
    return [{ part, name, usual: known, with: (value) => again(rig, feed, part, name, value) }];
  });
}

function again(rig: Rig, feed: Feed, part: string, name: string, value: number): Feed {
  const parts = rig.parts.map((one) =>
    one.id === part ? { ...one, settings: { ...one.settings, [name]: value } } : one,
  );
  const other = feedTo(build({ ...rig, parts }), feed.position);
  if (other === undefined) return feed;
  // As its knobs and numbers stand here; only what the circuits do is new.
  const stages = feed.stages.map((stage, at) => {
    const { passes, ohms } = other.stages[at] ?? stage;
    return { ...stage, passes, ohms };
  });
  return { ...feed, stages, worn: { ...feed.worn, ohms: other.worn.ohms } };
}

/**
 * What comes out with every number as usual, and between what it lies in about eight cases of ten: each unknown number is put at its low and its high end
 * alone, and what that changes adds up as independent errors do.
 */
export function spreadOf(
  feed: Feed,
  unknowns: readonly Unknown[],
  out: (feed: Feed) => number,
): Between {
  const value = out(feed);
  let [down, up] = [0, 0];
  for (const one of unknowns) {
    const changes = [one.usual.low, one.usual.high].map((end) => out(one.with(end)) - value);
    down += Math.min(0, ...changes) ** 2;
    up += Math.max(0, ...changes) ** 2;
  }
  return { value, low: value - Math.sqrt(down), high: value + Math.sqrt(up) };
}

/** A number drawn from what is usual: decibels from a normal distribution, the rest from one of its logarithm; eight in ten lie between low and high. */
export function drawn(name: FigureName, { low, typical, high }: Usual, normal: number): number {
  if (low === high) return typical;
  // Of a normal distribution eight in ten lie within 1.28 standard deviations.
  const part = normal / 1.2816;
  if (inDecibels(name)) return typical + part * (part > 0 ? high - typical : typical - low);
  const times = part > 0 ? high / typical : typical / low;
  return typical * times ** part;
}
