/** The contacts of a plug, from its end; the springs of a socket bear the same names. */
export const contacts = ["tip", "ring", "sleeve"] as const;
export type Contact = (typeof contacts)[number];

export type PlugKind = "TS" | "TRS";
/** A four-pole socket has its return spring in the middle, and so loses it first. */
export type SocketKind = "TRS" | "four-pole";

/** How far a plug is in: home, then each step on the way out (handbook, section 2). */
export const depths = [
  "home",
  "return spring off",
  "ring spring on the insulator",
  "both springs on the tip",
  "first click",
  "sleeve spring on the ring",
] as const;
export type Depth = (typeof depths)[number];

/** Which spring of the socket touches which contact of the plug. */
export type Touching = readonly (readonly [spring: Contact, contact: Contact])[];

const threePole: Readonly<Record<Depth, Touching>> = {
  home: [
    ["tip", "tip"],
    ["ring", "ring"],
    ["sleeve", "sleeve"],
  ],
  "return spring off": [
    ["tip", "tip"],
    ["ring", "ring"],
  ],
  "ring spring on the insulator": [
    ["tip", "tip"],
    ["sleeve", "sleeve"],
  ],
  "both springs on the tip": [
    ["tip", "tip"],
    ["ring", "tip"],
    ["sleeve", "sleeve"],
  ],
  "first click": [
    ["ring", "tip"],
    ["sleeve", "sleeve"],
  ],
  "sleeve spring on the ring": [
    ["ring", "tip"],
    ["sleeve", "ring"],
  ],
};

/**
 * The touching pairs of a plug at a depth. A TS plug is all sleeve where a TRS plug has its ring: at home it shorts the ring
 * spring to the sleeve.
 */
export function touching(plug: PlugKind, depth: Depth): Touching {
  const pairs = threePole[depth];
  if (plug === "TRS") return pairs;
  return pairs.map(([spring, contact]) => [spring, contact === "ring" ? "sleeve" : contact]);
}

/** The steps on the way out that differ from home, for a plug in a socket. */
export function stepsOut(plug: PlugKind, socket: SocketKind): readonly Depth[] {
  return depths.filter((depth) => {
    if (depth === "home") return false;
    if (depth === "return spring off") return socket === "four-pole";
    return plug === "TRS" || depth !== "sleeve spring on the ring";
  });
}
