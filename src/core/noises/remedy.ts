import type { Move } from "#core/rig/moves.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { Cause, CauseName } from "./cause.ts";

/** What helps against a noise, a closed list; what costs least first. */
const remedies = [
  "turn the earlier up",
  "turn it up and the next down",
  "earlier up, next down",
  "wheel before the ears",
  "quieter box",
  "mend at the source",
  "nearer and another channel",
  "other way by cable",
  "that lead left out",
  "all from one outlet",
  "on its battery",
  "balanced or transformer",
  "screen lifted at one end",
  "away from supplies",
  "balanced lead",
  "another lead",
  "another supply",
  "clean the plug",
  "turn the knob to and fro",
  "spray the knob",
  "other headphones",
  "bigger buffer",
  "source down, amplifier up",
  "pad",
  "turn it down",
  "fewer or other headphones",
  "less sensitive headphones",
  "ask by ear",
] as const;
export type Remedy = (typeof remedies)[number];

/** What must be said with it. */
const cautions = ["never lift a mains earth", "a tingle", "volume first", "power off"] as const;
export type NoiseCaution = (typeof cautions)[number];

const remedyFor: Readonly<Record<CauseName, readonly Remedy[]>> = {
  "in the programme": ["mend at the source"],
  "before the knob": ["turn the earlier up", "quieter box"],
  "behind the knob": ["turn it up and the next down", "quieter box"],
  "behind the last knob": ["wheel before the ears", "less sensitive headphones", "quieter box"],
  "the box itself": ["earlier up, next down", "quieter box"],
  "radio link": ["nearer and another channel", "other way by cable"],
  "loop by another lead": [
    "that lead left out",
    "on its battery",
    "all from one outlet",
    "balanced or transformer",
  ],
  "ground loop": [
    "all from one outlet",
    "on its battery",
    "balanced or transformer",
    "screen lifted at one end",
  ],
  "lead picks it up": ["away from supplies", "balanced lead"],
  "return lost": ["clean the plug", "another lead", "ask by ear"],
  "power supply": ["on its battery", "another supply", "quieter box"],
  "knob dirty": ["turn the knob to and fro", "spray the knob"],
  "plugs not clean": ["clean the plug"],
  "lead breaking": ["another lead"],
  "cord breaking": ["other headphones"],
  "source stutters": ["bigger buffer"],
  "input overloaded": ["source down, amplifier up", "pad"],
  "output at its end": ["turn it down", "fewer or other headphones"],
  "driver torn": ["other headphones"],
  "something else": [],
};

const cautionFor: Readonly<Partial<Record<CauseName, readonly NoiseCaution[]>>> = {
  "loop by another lead": ["never lift a mains earth", "a tingle", "volume first"],
  "ground loop": ["never lift a mains earth", "a tingle", "volume first"],
  "power supply": ["never lift a mains earth", "a tingle", "volume first"],
  "return lost": ["volume first"],
  "plugs not clean": ["volume first"],
  "lead breaking": ["volume first"],
  "cord breaking": ["volume first"],
  "driver torn": ["volume first"],
  "knob dirty": ["volume first", "power off"],
  "input overloaded": ["volume first"],
  "before the knob": ["volume first"],
  "behind the knob": ["volume first"],
  "behind the last knob": ["volume first"],
  "the box itself": ["volume first"],
};

/** What helps, what costs least first; nothing where the cause is on no list. */
export const remediesFor = ({ cause }: Cause): readonly Remedy[] => remedyFor[cause];

export const cautionsFor = ({ cause }: Cause): readonly NoiseCaution[] => cautionFor[cause] ?? [];

/** What is entered once it was mended, where mending it is a move: what was noticed before says nothing of the way any more. */
export function mendingMoves({ plugged }: Rig, cause: Cause): readonly Move[] {
  switch (cause.cause) {
    case "plugs not clean":
      return plugged
        .filter(({ part }) => part === cause.part)
        .map(({ part, plug }) => ({ move: "plugged anew", part, plug }));
    case "lead breaking":
    case "cord breaking":
    case "driver torn":
    case "return lost":
      return [{ move: "replaced", place: cause.part }];
    default:
      return [];
  }
}
