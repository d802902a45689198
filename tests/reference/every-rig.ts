import { type BuiltRig, build } from "#core/rig/rig.ts";
import { rigsByHand } from "./rigs-by-hand.ts";

/** Between them, every kind of part, every choice that changes one, and every fault of each. */
export const everyRig: readonly BuiltRig[] = rigsByHand.map(build);
