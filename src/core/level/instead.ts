import { catalogue } from "#core/parts/catalogue.ts";
import { build, type Rig, type RigPart } from "#core/rig/rig.ts";
import type { Decibels, Ohms } from "#core/units/units.ts";
import { adviceFor, hissOf, levelOf } from "./advice.ts";
import { type Feed, feedTo, type Programme } from "./stages.ts";

/** What stands at a position, or what might stand there instead. */
export type Instead =
  | { readonly is: "now" }
  | { readonly is: "twice the volts"; readonly part: string }
  | { readonly is: "other headphones"; readonly ohms: Ohms };

/** What that gives, every knob as it is best. */
export interface Given {
  readonly what: Instead;
  /** The loudest with no peak cut. */
  readonly most: Decibels;
  /** The hiss at the level wanted, */
  readonly hiss: Decibels;
  /** and what that level falls short. */
  readonly short: Decibels;
}

/** Louder than anything is wanted. */
const all: Decibels = 200;

function given(what: Instead, feed: Feed, programme: Programme, wanted: Decibels): Given {
  const { then, short } = adviceFor(feed, programme, wanted);
  const most = levelOf(adviceFor(feed, programme, all).then);
  return { what, most, hiss: hissOf(then), short };
}

/** Usual impedances of what is worn. Common practice, no source. */
const others: Readonly<Record<string, readonly Ohms[]>> = {
  headphones: [32, 80, 250],
  headset: [32, 80, 250],
  "in-ears": [8, 16, 32],
};

/** What there is now, what the last box would give with twice the volts, and what other headphones would, with all else that is not known of them as usual. */
export function insteadAt(
  rig: Rig,
  feed: Feed,
  programme: Programme,
  wanted: Decibels,
): readonly Given[] {
  const bigger = withTwiceTheVolts(feed);
  const worn = rig.parts.find(({ id }) => id === feed.worn.part);
  return [
    given({ is: "now" }, feed, programme, wanted),
    ...(bigger
      ? [given({ is: "twice the volts", part: bigger.part }, bigger.feed, programme, wanted)]
      : []),
    ...(worn ? othersWorn(rig, feed, worn) : []).map(([ohms, one]) =>
      given({ is: "other headphones", ohms }, one, programme, wanted),
    ),
  ];
}

/** Twice is 6 dB more. Nothing where a link ends: there are no volts. */
function withTwiceTheVolts(feed: Feed): { readonly part: string; readonly feed: Feed } | undefined {
  const last = feed.stages.at(-1);
  if (last === undefined) return undefined;
  const most = last.figures["most volts"];
  if (!most.told && most.low === most.high) return undefined;
  const figures = { ...last.figures, "most volts": { ...most, typical: 2 * most.typical } };
  return {
    part: last.part,
    feed: { ...feed, stages: [...feed.stages.slice(0, -1), { ...last, figures }] },
  };
}

function othersWorn(rig: Rig, feed: Feed, worn: RigPart): readonly (readonly [Ohms, Feed])[] {
  const range = catalogue[worn.kind].parameters.ohms;
  if (range === undefined || !("unit" in range)) return [];
  return (others[worn.kind] ?? []).flatMap((ohms) => {
    if (Math.abs(Math.log2(ohms / feed.worn.ohms)) < 0.3) return [];
    const {
      sensitivity: _,
      "sensitivity in": __,
      "peak ohms": ___,
      ...settings
    } = worn.settings ?? {};
    const parts = rig.parts.map((part) =>
      part.id === worn.id ? { ...part, settings: { ...settings, ohms } } : part,
    );
    const other = feedTo(build({ ...rig, parts }), feed.position);
    return other === undefined ? [] : [[ohms, other] as const];
  });
}
