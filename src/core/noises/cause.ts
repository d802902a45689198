/** Where a noise may come in, a closed list. Parts and sockets are the rig's own. */
export type Cause =
  | { readonly cause: (typeof alone)[number] }
  | { readonly cause: (typeof inPart)[number]; readonly part: string }
  | { readonly cause: (typeof atSocket)[number]; readonly part: string; readonly socket: string };

const alone = ["in the programme", "something else"] as const;
const inPart = [
  "radio link",
  "the box itself",
  "ground loop",
  "loop by another lead",
  "lead picks it up",
  "return lost",
  "power supply",
  "plugs not clean",
  "lead breaking",
  "cord breaking",
  "source stutters",
  "input overloaded",
  "driver torn",
] as const;
const atSocket = [
  "before the knob",
  "behind the knob",
  "behind the last knob",
  "knob dirty",
  "output at its end",
] as const;

export type CauseName = Cause["cause"];

export const unlisted: Cause = { cause: "something else" };

/** Two causes are the same where this is. */
export const causeKey = (cause: Cause): string =>
  [cause.cause, "part" in cause ? cause.part : "", "socket" in cause ? cause.socket : ""].join(
    " / ",
  );
