import type { EarCheck } from "./check.ts";
import { whereWas } from "./hear.ts";

/** One knock on the left programme alone. */
export const left: EarCheck = {
  name: "left",
  signal: "left-ident",
  questions: [whereWas("one knock", [1, 0])],
  seconds: 6,
  required: true,
};

/** Two knocks on the right programme alone, of the same spectrum and level. */
export const right: EarCheck = {
  name: "right",
  signal: "right-ident",
  questions: [whereWas("two knocks", [0, 1])],
  seconds: 6,
  required: true,
};
