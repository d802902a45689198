import type { FaultName } from "./fault-names.ts";
import { type Kind, kindOf } from "./kind.ts";
import type { Fault, Part } from "./part.ts";
import { setFault } from "./switch-faults.ts";

const trait = (
  name: FaultName,
  control: string,
  value: number,
  weight: number,
  seen: boolean,
): Fault => ({
  name,
  at: "settings",
  edits: [{ edit: "control", control, value }],
  weight,
  slot: control,
  seen,
  repair: 8,
});

const person = (controls: Part["controls"], faults: readonly Fault[], look: number): Kind =>
  kindOf("person", {}, () => ({
    plugs: [],
    sockets: [],
    body: [],
    takes: [],
    controls,
    faults,
    look,
  }));

/** Decibels between the ears that 2.8 % of adults exceed at 0.5 to 4 kHz (handbook, section 6). */
const lessHearing = 10 ** (-15 / 20);

/** Who wears the headphones. Odds from the handbook, section 6. */
export const listener = person(
  { worn: 1, "left hearing": 1, "right hearing": 1, mirrors: 0 },
  [
    trait("worn backwards", "worn", -1, 150, true),
    trait("left ear hears less", "left hearing", lessHearing, 150, false),
    trait("right ear hears less", "right hearing", lessHearing, 150, false),
    trait("mirrors left and right", "mirrors", 1, 500, false),
  ],
  8,
);

/** Who asks and writes down: facing the performer, some mirror every answer (0.03, handbook, section 6; common practice, no source). */
export const operator = person(
  { mirrors: 0 },
  [trait("mirrors left and right", "mirrors", 1, 300, false)],
  8,
);

/** To say so: there is nothing to mend. */
const sayingSo = { slot: "wanted", repair: 1 } as const;

/**
 * Whoever ordered the feed: some want it in mono, some want all of it in one ear, and asking shows it; a performer is asked in 10 s
 * (handbook, section 8). Nobody orders half of a programme, so one ear gets both sides. Odds: common practice, no source.
 */
export const client = person(
  { mono: 0, "left ear": 1, "right ear": 1 },
  [
    setFault("mono is meant", { mono: 1 }, 60, sayingSo),
    setFault("left ear alone is meant", { mono: 1, "right ear": 0 }, 20, sayingSo),
    setFault("right ear alone is meant", { mono: 1, "left ear": 0 }, 20, sayingSo),
  ],
  10,
);
