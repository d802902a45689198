import { type Feed, feedTo } from "#core/level/stages.ts";
import type { Settings } from "#core/parts/kind.ts";
import { build, type Rig } from "#core/rig/rig.ts";

/** A rig with some settings of some parts. */
export const set = (rig: Rig, all: Readonly<Record<string, Settings>>): Rig => ({
  ...rig,
  parts: rig.parts.map((part) => ({ ...part, settings: { ...part.settings, ...all[part.id] } })),
});

/** The way to a position, the first unless told otherwise. */
export function feedIn(rig: Rig, position = rig.positions[0]?.id ?? ""): Feed {
  const feed = feedTo(build(rig), position);
  if (feed === undefined) throw new Error("nothing feeds it");
  return feed;
}
