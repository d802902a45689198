import { type Heard, heards, placeOf } from "#core/listening/heard.ts";
import type { Behaviour } from "#core/rig/behaviour.ts";
import type { EarCheck } from "./check.ts";
import { whereWas } from "./hear.ts";

const cups = ["cup marked L", "cup marked R", "both cups", "neither cup"] as const;

/** A hand goes to the sound, so it matters neither who mirrors nor how the headphones are worn. */
const touched = (behaviour: Behaviour): Behaviour => ({ ...behaviour, worn: 1, mirrors: false });
const cupOf = (heard: Heard): (typeof cups)[number] => {
  if (heard === "nothing") return "neither cup";
  const place = placeOf(heard);
  if (place.includes("left")) return "cup marked L";
  return place.includes("right") ? "cup marked R" : "both cups";
};

const where = whereWas("touch it", [1, 0]);

/** Touch the cup you hear the knock in: which letter is on it? Tells a crossed feed from people who mirror. */
export const cup: EarCheck = {
  name: "cup",
  signal: "left-ident",
  questions: [
    {
      name: "touch it",
      answers: cups,
      predict: (behaviour, healthy) => {
        const heard = where.predict(touched(behaviour), healthy);
        return Float64Array.from(cups, (name) =>
          heards.reduce(
            (sum, one, index) => sum + (cupOf(one) === name ? (heard[index] ?? 0) : 0),
            0,
          ),
        );
      },
    },
  ],
  seconds: 8,
  required: false,
};
