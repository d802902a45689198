import type { Edited } from "#core/drawing/edited.ts";
import type { Called } from "#core/drawing/putting.ts";
import { chainTo } from "#core/rig/chain.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import { type StartKey, startKeys } from "#core/rig/start-words.ts";
import { starts } from "#core/rig/starts.ts";
import { english } from "#core/words/english.ts";
import { starts as words } from "#ui/words/english/starts.ts";

export const called: Called = (kind) => english.patching.kinds[kind].name;

export function start(key: StartKey): Rig {
  const rig = starts[startKeys.indexOf(key)]?.make(words);
  if (rig === undefined) throw new Error(`there is no start ${key}`);
  return rig;
}

export function rigOf(edited: Edited): Rig {
  if ("refusal" in edited) throw new Error(JSON.stringify(edited.refusal));
  return edited.rig;
}

export const refusalOf = (edited: Edited) => ("refusal" in edited ? edited.refusal : undefined);

export const wayTo = (rig: Rig, position: string) =>
  chainTo(build(rig), position).map(({ part }) => part);
