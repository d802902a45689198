import { type BuiltRig, build } from "#core/rig/rig.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { fedRigs } from "./fed-rigs.ts";
import { lineRigs } from "./line-rigs.ts";
import { patchbayRigs } from "./patchbay-rigs.ts";
import { rowRigs } from "./row-rigs.ts";
import { laptopIntoAmplifier } from "./small-rigs.ts";
import { stagedRigs } from "./staged-rigs.ts";
import { wornRigs } from "./worn-rigs.ts";

/** Between them, every kind of part, every choice that changes one, and every fault of each. */
export const everyRig: readonly BuiltRig[] = [
  ...builtInRigs,
  laptopIntoAmplifier,
  ...wornRigs,
  ...stagedRigs,
  ...fedRigs,
  ...lineRigs,
  ...patchbayRigs,
  ...rowRigs,
].map(build);
