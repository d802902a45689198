import type { Term } from "#ui/words/term-names.ts";

/** Words for contacts, conductors and leads. */
export const wires = {
  balanced: {
    term: "balanced",
    text: "One signal on two conductors, hot and cold, of which an input takes the difference: what both pick up on the way is gone. A stereo headphone socket is not balanced, though its plug is the same.",
  },
  cold: {
    term: "cold",
    text: "The conductor of a balanced line that carries the signal upside down, or none at all: pin 3 of an XLR, the ring of a balanced TRS.",
  },
  contact: {
    term: "contact",
    text: "The place where a plug touches its socket. Dirt or a tired spring gives it some ohms, or lets it come and go.",
  },
  ground: {
    term: "ground, earth",
    text: "What all voltages are counted from. In a headphone lead it is the return; on the mains it protects people and is never lifted.",
  },
  "ground loop": {
    term: "ground loop",
    text: "Two boxes joined both by a lead's ground and by the mains earth. A current at the mains frequency flows round it and is heard as hum.",
  },
  "headset plug": {
    term: "headset plug, TRRS",
    text: "A 3.5 mm plug with four contacts: left, right, and common and microphone in one of two orders. In the wrong socket the return goes through the microphone and the middle is gone.",
  },
  hot: {
    term: "hot",
    text: "The conductor of a balanced line that carries the signal the right way up: pin 2 of an XLR, the tip of a balanced TRS.",
  },
  "impedance-balanced": {
    term: "impedance-balanced",
    text: "A balanced output whose cold conductor carries nothing and has only the same resistance to ground. Into a stereo socket it plays in one ear.",
  },
  insert: {
    term: "insert",
    text: "One TRS socket of a channel, out on one contact and back in on the other. A plug pulled to its first click takes the signal out without breaking the way.",
  },
  "insert Y": {
    term: "insert Y",
    text: "A lead from one TRS plug to two TS plugs, tip to one and ring to the other. From two output sockets into a stereo input it makes stereo.",
  },
  leg: {
    term: "leg",
    text: "One of the two signal conductors inside a balanced line. Left and right are sides, not legs.",
  },
  "load box": {
    term: "load box",
    text: "Two equal resistors with their star point on nothing but a lead's sleeve. Only with it, or with headphones, does a measurement see a lost return.",
  },
  normalled: {
    term: "normalled",
    text: "Joined inside a socket as long as no plug is in it. 'Left/mono' feeds both sides while the right socket is empty.",
  },
  "not home": {
    term: "not home",
    text: "A plug that is not pushed in all the way, so that springs stand on the wrong contacts. The most frequent fault of all, and cured by a push.",
  },
  "passive splitter": {
    term: "passive splitter",
    text: "One socket wired to several, with no amplifier between. All that hang on it are one circuit: a fault in one lead is heard by everybody.",
  },
  return: {
    term: "return",
    text: "The conductor that both sides share on their way back, the sleeve of a headphone plug. Lost, both ears get left minus right.",
  },
  ring: {
    term: "ring",
    text: "The middle contact of a TRS plug: the right side of a stereo feed, the cold one of a balanced line.",
  },
  screen: {
    term: "screen, shield",
    text: "The braid or foil round a lead's conductors that keeps hum out. In an unbalanced lead it is the return as well.",
  },
  sleeve: {
    term: "sleeve",
    text: "The contact of a plug next to its body: the return of headphones, the screen of a balanced line.",
  },
  "strain relief": {
    term: "strain relief",
    text: "Where a lead goes into its plug. It is bent there most, and breaks there first.",
  },
  tip: {
    term: "tip",
    text: "The foremost contact of a plug: the left side of a stereo feed, the hot one of a balanced line, the signal of a TS.",
  },
  TRS: {
    term: "TRS",
    text: "A plug with three contacts: tip, ring and sleeve. It carries either two sides with a common return or one balanced signal, and shows nothing of which.",
  },
  TS: {
    term: "TS",
    text: "A plug with two contacts, tip and sleeve, for one unbalanced signal. In a stereo socket it shorts the right side.",
  },
  unbalanced: {
    term: "unbalanced",
    text: "A signal on one conductor against the screen, which is also its return. Good for some metres.",
  },
  XLR: {
    term: "XLR",
    text: "A round plug with a latch and three pins: 1 screen, 2 hot, 3 cold.",
  },
} satisfies Readonly<Record<string, Term>>;
