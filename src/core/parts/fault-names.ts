import { boxNames } from "./names-boxes.ts";
import { settingNames } from "./names-settings.ts";
import { wantedNames } from "./names-wanted.ts";
import { wearingNames } from "./names-wearing.ts";
import { wireNames } from "./names-wires.ts";

/** Every fault there is, in the order a reader would look for it. What is said of each stands in `core/words`. */
export const faultNames = [
  ...wireNames,
  ...settingNames,
  ...boxNames,
  ...wearingNames,
  ...wantedNames,
  "something not on the list",
] as const;
export type FaultName = (typeof faultNames)[number];
