import type { Cores, LeadEnd, LeadWire, Shape } from "./lead.ts";
import { legsExchanged, odds, sidesTogether } from "./lead-faults.ts";
import { point } from "./part.ts";
import { type Contact, contactsOf, type JackSize, type PlugKind } from "./plugs.ts";

/** An end, its contact for the signal and the one for the return, for a lead of separate sides. */
const signalOf = (kind: PlugKind): Contact => (kind === "XLR" ? "pin 2" : "tip");
const returnOf = (kind: PlugKind): Contact => (kind === "XLR" ? "pin 1" : "sleeve");

/** Like to like, a plug at each end. `near` is the end towards the source. */
export function straight(kind: PlugKind, near: JackSize, far: JackSize): Shape {
  const wires = contactsOf(kind);
  const signals = wires.filter((contact) => contact !== returnOf(kind));
  const [one = signalOf(kind), two = returnOf(kind)] = signals;
  return {
    ends: [
      { name: "near", kind, size: near },
      { name: "far", kind, size: far },
    ],
    wires: wires.map((contact) => [contact, point("near", contact), point("far", contact)]),
    cores: [[point("far", one), point("far", two)]],
    weak: [{ at: "body", end: "far", odds: odds.lead }],
  };
}

/** What the rings of an insert Y with three-contact plugs are soldered to. */
export type Rings = "unused" | "to sleeve";

const leg = (name: string, core: Contact, kind: PlugKind, rings: Rings): readonly LeadWire[] => [
  [`${name} tip`, point("fork", core), point(name, signalOf(kind)), 0.5],
  [`${name} sleeve`, point("fork", "sleeve"), point(name, returnOf(kind)), 0.5],
  ...(rings === "to sleeve"
    ? [[`${name} ring`, point(name, "ring"), point(name, "sleeve"), 0] as const]
    : []),
];

const legCores = (name: string, kind: PlugKind): Cores => [
  point(name, signalOf(kind)),
  point(name, returnOf(kind)),
  0.5,
];

/**
 * A stem with three contacts that forks halfway: its tip to the plug marked left, its ring to the one marked right (handbook, section 2).
 * Wrong orders of the stem are told at 'body', as those of a straight lead are.
 */
export function forked(stem: JackSize, kind: PlugKind, rings: Rings = "unused"): Shape {
  const wires: readonly LeadWire[] = [
    ...(["tip", "ring", "sleeve"] as const).map(
      (contact): LeadWire => [contact, point("stem", contact), point("fork", contact), 0.5],
    ),
    ...leg("left", "tip", kind, rings),
    ...leg("right", "ring", kind, rings),
  ];
  return {
    ends: [
      { name: "stem", kind: "TRS", size: stem },
      { name: "left", kind },
      { name: "right", kind },
    ],
    wires,
    cores: [
      [point("fork", "tip"), point("fork", "ring"), 0.5],
      legCores("left", kind),
      legCores("right", kind),
    ],
    weak: [
      { at: "body", end: "stem", odds: odds.lead },
      { at: "left", end: "left", odds: odds.leg },
      { at: "right", end: "right", odds: odds.leg },
    ],
    more: [
      sidesTogether(point("fork", "tip"), point("fork", "ring")),
      legsExchanged(wires, "left", "right"),
    ],
  };
}

const sides = ["left", "right"] as const;

/** Two cables side by side, a plug each side at each end. */
export function pairOf(near: PlugKind, far: PlugKind): Shape {
  const wires = sides.flatMap((side): readonly LeadWire[] => [
    [`${side} tip`, point(`near ${side}`, "tip"), point(`far ${side}`, "tip")],
    [`${side} sleeve`, point(`near ${side}`, "sleeve"), point(`far ${side}`, "sleeve")],
  ]);
  const ends = (end: string, kind: PlugKind) =>
    sides.map((side): LeadEnd => ({ name: `${end} ${side}`, kind }));
  return {
    ends: [...ends("near", near), ...ends("far", far)],
    wires,
    cores: sides.map((side) => [point(`far ${side}`, "tip"), point(`far ${side}`, "sleeve")]),
    weak: sides.map((side) => ({ at: `far ${side}`, end: `far ${side}`, odds: odds.leg })),
    more: [legsExchanged(wires, "far left", "far right")],
  };
}

/** Two balanced outputs to one stereo plug: pin 2 of each to its tip and its ring. */
export function twoXlrToTrs(stem: JackSize, cold: "unused" | "to pin 1"): Shape {
  const legs = sides.flatMap((side): readonly LeadWire[] => [
    [`${side} hot`, point(side, "pin 2"), point("stem", side === "left" ? "tip" : "ring")],
    [`${side} screen`, point(side, "pin 1"), "lug"],
    ...(cold === "to pin 1"
      ? [[`${side} cold`, point(side, "pin 3"), point(side, "pin 1"), 0] as const]
      : []),
  ]);
  const wires: readonly LeadWire[] = [...legs, ["sleeve", "lug", point("stem", "sleeve"), 0]];
  return {
    ends: [
      ...sides.map((name): LeadEnd => ({ name, kind: "XLR" })),
      { name: "stem", kind: "TRS", size: stem },
    ],
    wires,
    cores: sides.map((side) => [point(side, "pin 2"), point(side, "pin 1")]),
    weak: [
      { at: "body", end: "stem", odds: odds.lead },
      ...sides.map((side) => ({ at: side, end: side, odds: odds.leg })),
    ],
    more: [
      sidesTogether(point("stem", "tip"), point("stem", "ring")),
      legsExchanged(wires, "left", "right"),
    ],
  };
}

/** One signal to tip and ring; its return to the sleeve. */
export const toBoth = (kind: PlugKind, size: JackSize): Shape => ({
  ends: [
    { name: "near", kind },
    { name: "far", kind: "TRS", size },
  ],
  wires: [
    ["tip", point("near", signalOf(kind)), point("far", "tip")],
    ["ring", point("near", signalOf(kind)), point("far", "ring")],
    ["sleeve", point("near", returnOf(kind)), point("far", "sleeve")],
  ],
  cores: [[point("far", "tip"), point("far", "sleeve")]],
  weak: [
    { at: "body", end: "far", odds: odds.lead },
    { at: "near", end: "near", odds: odds.otherEnd },
  ],
});

/** One signal to the right side alone, on purpose: the left stays empty. */
export const toRight = (kind: PlugKind, size: JackSize): Shape => ({
  ends: [
    { name: "near", kind },
    { name: "far", kind: "TRS", size },
  ],
  wires: [
    ["ring", point("near", signalOf(kind)), point("far", "ring")],
    ["sleeve", point("near", returnOf(kind)), point("far", "sleeve")],
  ],
  cores: [[point("far", "ring"), point("far", "sleeve")]],
  weak: [{ at: "body", end: "far", odds: odds.lead }],
});

/** Both signals to one tip. It is taken for a stereo lead, and is none: handbook, section 2. */
export function monoSum(): Shape {
  const wires: readonly LeadWire[] = [
    ["tip", point("stem", "tip"), point("fork", "tip"), 0.5],
    ["sleeve", point("stem", "sleeve"), point("fork", "sleeve"), 0.5],
    ...leg("left", "tip", "TS", "unused"),
    ...leg("right", "tip", "TS", "unused"),
  ];
  return {
    ends: [
      { name: "stem", kind: "TS" },
      { name: "left", kind: "TS" },
      { name: "right", kind: "TS" },
    ],
    wires,
    cores: [
      [point("fork", "tip"), point("fork", "sleeve"), 0.5],
      legCores("left", "TS"),
      legCores("right", "TS"),
    ],
    weak: [
      { at: "body", end: "stem", odds: odds.lead },
      { at: "left", end: "left", odds: odds.leg },
      { at: "right", end: "right", odds: odds.leg },
    ],
  };
}

/** A balanced line onto tip and ring: the usual wrong lead into a stereo input, the right one into a balanced one. */
export const xlrToTrs = (size: JackSize): Shape => ({
  ends: [
    { name: "near", kind: "XLR" },
    { name: "far", kind: "TRS", size },
  ],
  wires: [
    ["screen", point("near", "pin 1"), point("far", "sleeve")],
    ["hot", point("near", "pin 2"), point("far", "tip")],
    ["cold", point("near", "pin 3"), point("far", "ring")],
  ],
  cores: [[point("far", "tip"), point("far", "ring")]],
  weak: [{ at: "body", end: "near", odds: odds.lead }],
});
