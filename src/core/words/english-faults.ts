import type { FaultName } from "#core/parts/fault-names.ts";
import { boxes } from "./english-boxes.ts";
import { settings } from "./english-settings.ts";
import { wanted } from "./english-wanted.ts";
import { wearing } from "./english-wearing.ts";
import { wires } from "./english-wires.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

/** What is said of every fault. */
export const faults: Readonly<Record<FaultName, FaultWords>> = {
  ...wires,
  ...settings,
  ...boxes,
  ...wearing,
  ...wanted,
  "something not on the list": words(
    "it is something that is not on the list",
    "cannot be seen",
    "go along the chain with parts known to be good, one at a time",
  ),
};
