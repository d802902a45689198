import type { boxNames } from "#core/parts/names-boxes.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const fiveTimes = "plug in and out five times at @; if it comes back, use another socket";
const uneven = (side: string): FaultWords =>
  words(
    `the volume knob of @ is uneven near its bottom and leaves the ${side} side weaker`,
    "cannot be seen",
    "turn the feed down before @, then its volume up past a quarter: there the sides agree",
  );

/** Common practice, no source, where a repair is named. */
export const boxes: Readonly<Record<(typeof boxNames)[number], FaultWords>> = {
  "left side of the output dead": words(
    "the left side is dead at @",
    "cannot be seen",
    "use another output than @",
  ),
  "right side of the output dead": words(
    "the right side is dead at @",
    "cannot be seen",
    "use another output than @",
  ),
  "output dead": words("the output is dead at @", "cannot be seen", "use another output than @"),
  "left side of the input dead": words(
    "the left side of the input is dead at @",
    "cannot be seen",
    "plug in and out five times at @; then use another one",
  ),
  "right side of the input dead": words(
    "the right side of the input is dead at @",
    "cannot be seen",
    "plug in and out five times at @; then use another one",
  ),
  "return spring of the socket worn": words(
    "the return spring of the socket is worn at @",
    "cannot be seen",
    fiveTimes,
  ),
  "normal does not close": words(
    "the left jack does not reach the right side at @, though the right jack is empty",
    "cannot be seen",
    "plug in and out five times at the right jack of @, or feed both jacks",
  ),
  "normal does not open": words(
    "the two jacks stay joined at @, though both are in use",
    "cannot be seen",
    fiveTimes,
  ),
  "volume knob uneven, left weaker": uneven("left"),
  "volume knob uneven, right weaker": uneven("right"),
  "battery flat": words(
    "the battery of @ is flat",
    "no light, or a warning on the display",
    "put a fresh battery into @, its volume down first",
  ),
};
