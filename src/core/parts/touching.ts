import {
  type Contact,
  contactsOf,
  type Depth,
  depths,
  fits,
  type PlugKind,
  type SocketKind,
  type Touching,
} from "./plugs.ts";

/** A three-contact plug in a three-pole socket. Handbook, section 2. */
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

/** A four-contact plug in a four-pole socket: out by one contact, each spring is on the contact before its own. */
const fourInFour: Readonly<Partial<Record<Depth, Touching>>> = {
  home: [
    ["tip", "tip"],
    ["ring", "ring"],
    ["ring 2", "ring 2"],
    ["sleeve", "sleeve"],
  ],
  "ring spring on the insulator": [
    ["tip", "tip"],
    ["sleeve", "sleeve"],
  ],
  "first click": [
    ["ring", "tip"],
    ["ring 2", "ring"],
    ["sleeve", "ring 2"],
  ],
};

const isFourPole = (socket: SocketKind): boolean => socket.startsWith("four-pole");

/**
 * The touching pairs of a plug in a socket at a depth, springs in the order of the plug's contacts. A TS plug is all sleeve where a TRS
 * plug has its ring: at home it shorts the ring spring to the sleeve. Throws where the plug does not go in.
 */
export function touching(plug: PlugKind, socket: SocketKind, depth: Depth): Touching {
  if (!fits({ kind: plug }, { kind: socket }))
    throw new Error(`no ${plug} plug goes into a ${socket} socket`);
  if (plug === "XLR" || plug === "RCA" || plug === "link") return straight(plug, depth);
  if (plug === "TRRS" && isFourPole(socket)) return fourInFour[depth] ?? fourInFour.home ?? [];
  const pairs = threePole[depth].filter(([spring]) => socket !== "TS" || spring !== "ring");
  return isFourPole(socket)
    ? inFourPole(plug, depth, pairs, socket)
    : inThreePole(plug, depth, pairs, socket);
}

/** Contacts that meet their own kind; the shell lets go first. */
const straight = (plug: PlugKind, depth: Depth): Touching =>
  contactsOf(plug)
    .filter((contact) => depth === "home" || contact !== "sleeve")
    .map((contact) => [contact, contact] as const);

function inThreePole(plug: PlugKind, depth: Depth, pairs: Touching, socket: SocketKind): Touching {
  const own = pairs.map(([spring, contact]) => [spring, on(plug, contact)] as const);
  const deep = plug === "TRRS" && socket === "TRS with a deep spring" && depth === "home";
  return deep ? [...own, ["sleeve", "ring 2"]] : own;
}

/** The sleeve of a plug with two or three contacts lies under both of the rear springs. */
function inFourPole(plug: PlugKind, depth: Depth, pairs: Touching, socket: SocketKind): Touching {
  const common: Contact = socket === "four-pole, common on ring 2" ? "ring 2" : "sleeve";
  const microphone: Contact = common === "ring 2" ? "sleeve" : "ring 2";
  const rear = depth === "sleeve spring on the ring" ? [common] : [common, microphone];
  return pairs.flatMap(([spring, contact]) => {
    const springs: readonly Contact[] = spring === "sleeve" ? rear : [spring];
    return springs.map((each) => [each, on(plug, contact)] as const);
  });
}

/** The contact of a plug that lies where a three-contact plug has this one. */
const on = (plug: PlugKind, contact: Contact): Contact =>
  plug === "TS" && contact === "ring" ? "sleeve" : contact;

/** The steps on the way out that differ from home, for a plug in a socket. */
export function stepsOut(plug: PlugKind, socket: SocketKind): readonly Depth[] {
  if (plug === "XLR" || plug === "link") return [];
  if (plug === "RCA") return ["return spring off"];
  if (plug === "TRRS" && isFourPole(socket)) return ["ring spring on the insulator", "first click"];
  return depths.filter((depth) => {
    if (depth === "home") return false;
    if (depth === "return spring off") return socket === "four-pole, common on ring 2";
    if (socket === "TS") return depth === "first click";
    return plug !== "TS" || depth !== "sleeve spring on the ring";
  });
}
