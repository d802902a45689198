import type { Rig } from "#core/rig/rig.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { fedRigs } from "./fed-rigs.ts";
import { lineRigs } from "./line-rigs.ts";
import { patchbayRigs } from "./patchbay-rigs.ts";
import { provedRigs } from "./proved-rigs.ts";
import { rowRigs } from "./row-rigs.ts";
import { laptopIntoAmplifier } from "./small-rigs.ts";
import { stagedRigs } from "./staged-rigs.ts";
import { wornRigs } from "./worn-rigs.ts";

/** Rigs of every kind, drawn by hand: headsets, wireless, splitters, patchbays, stages in a row. */
export const rigsByHand: readonly Rig[] = [
  ...builtInRigs,
  laptopIntoAmplifier,
  ...wornRigs,
  ...stagedRigs,
  ...fedRigs,
  ...lineRigs,
  ...patchbayRigs,
  ...rowRigs,
  ...provedRigs,
];
