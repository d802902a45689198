/** The contacts of a plug, jacks from their end; the springs and pins of a socket bear the same names. */
const contacts = ["tip", "ring", "ring 2", "sleeve", "pin 1", "pin 2", "pin 3"] as const;
export type Contact = (typeof contacts)[number];

/**
 * A jack with two, three or four contacts, an XLR, an RCA (its shell counts as the sleeve), or a link: radio or digital audio, written
 * as three ideal wires.
 */
export type PlugKind = "TS" | "TRS" | "TRRS" | "XLR" | "RCA" | "link";

/**
 * Jack sockets by their springs. Four-pole ones have the common in the middle ('common on ring 2') or at the bush ('common on
 * sleeve'). A three-pole socket touches the sleeve at its bush; one 'with a deep spring' touches the second ring of a four-pole plug as
 * well (handbook, section 2).
 */
export type SocketKind =
  | "TS"
  | "TRS"
  | "TRS with a deep spring"
  | "four-pole, common on ring 2"
  | "four-pole, common on sleeve"
  | "XLR"
  | "RCA"
  | "link";

/** What a jack measures across. Other plugs have one size. */
export const jackSizes = ["6.35 mm", "3.5 mm"] as const;
export type JackSize = (typeof jackSizes)[number];

const contactsOn: Readonly<Record<PlugKind, readonly Contact[]>> = {
  TS: ["tip", "sleeve"],
  TRS: ["tip", "ring", "sleeve"],
  TRRS: ["tip", "ring", "ring 2", "sleeve"],
  XLR: ["pin 1", "pin 2", "pin 3"],
  RCA: ["tip", "sleeve"],
  link: ["tip", "ring", "sleeve"],
};

/** The contacts that a plug has. */
export const contactsOf = (plug: PlugKind): readonly Contact[] => contactsOn[plug];

const familyOf = (kind: PlugKind | SocketKind): "jack" | "XLR" | "RCA" | "link" =>
  kind === "XLR" || kind === "RCA" || kind === "link" ? kind : "jack";

interface Fitting<Kind> {
  readonly kind: Kind;
  /** Of a jack. */
  readonly size?: JackSize;
}

/** Whether a hand can push this plug into that socket. Jacks without a size are 6.35 mm. */
export const fits = (plug: Fitting<PlugKind>, socket: Fitting<SocketKind>): boolean =>
  familyOf(plug.kind) === familyOf(socket.kind) &&
  (familyOf(plug.kind) !== "jack" || (plug.size ?? "6.35 mm") === (socket.size ?? "6.35 mm"));

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
