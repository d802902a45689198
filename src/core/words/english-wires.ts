import type { wireNames } from "#core/parts/names-wires.ts";
import { replace, words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const hidden = "cannot be seen";
const twist = "replace @ by one known to be good; it may only want its contacts cleaned";
const wrongOrder = (how: string): FaultWords =>
  words(`${how} in @`, hidden, "replace @; it was wired wrongly and wants its plug rebuilt");
const home = (what: string): FaultWords =>
  words(`@ is not home: ${what}`, "not pushed home", "push @ home until it clicks");

const dirty = (what: string): FaultWords => words(`${what} of dirt in @`, hidden, twist);
const broken = (what: string): FaultWords => words(`the ${what} is open in @`, hidden, twist);
const touching = (what: string): FaultWords => words(`${what} touch in @`, hidden, replace);
const oxidised = (what: string): FaultWords =>
  words(
    `${what} at @`,
    hidden,
    "plug in and out of @ five times; if it comes back, patch over it with a lead",
  );
const uneven = (side: string): FaultWords =>
  words(
    `the volume wheel of @ stands so low that its ${side} side is weaker`,
    "turned down nearly all the way",
    "turn the source down and the wheel of @ up",
  );

/** Common practice, no source, where a repair is named. */
export const wires: Readonly<Record<(typeof wireNames)[number], FaultWords>> = {
  "tip open": broken("tip contact"),
  "ring open": broken("ring contact"),
  "sleeve open": words("the return is lost in @", hidden, twist),
  "tip and ring shorted": touching("tip and ring"),
  "tip and sleeve shorted": touching("tip and sleeve"),
  "ring and sleeve shorted": touching("ring and sleeve"),
  "tip and ring exchanged": wrongOrder("tip and ring are exchanged"),
  "tip and sleeve exchanged": wrongOrder("tip and sleeve are exchanged"),
  "ring and sleeve exchanged": wrongOrder("ring and sleeve are exchanged"),
  "contacts turned, tip to ring": wrongOrder("the contacts are turned, tip to ring,"),
  "contacts turned, tip to sleeve": wrongOrder("the contacts are turned, tip to sleeve,"),
  "return of 3 ohms": dirty("the return has about 3 Ω"),
  "return of 10 ohms": dirty("the return has about 10 Ω"),
  "return of 30 ohms": dirty("the return has about 30 Ω"),
  "return of 300 ohms": dirty("the return has about 300 Ω"),
  "tip of 30 ohms": dirty("the tip has about 30 Ω"),
  "tip of 300 ohms": dirty("the tip has about 300 Ω"),
  "ring of 30 ohms": dirty("the ring has about 30 Ω"),
  "ring of 300 ohms": dirty("the ring has about 300 Ω"),
  "shell open": words("the shell, which is the return, is open in @", hidden, twist),
  "tip and shell shorted": touching("tip and shell"),
  "tip and shell exchanged": wrongOrder("tip and shell are exchanged"),
  "screen open": broken("screen (pin 1)"),
  "hot open": broken("hot leg (pin 2)"),
  "cold open": broken("cold leg (pin 3)"),
  "hot and cold shorted": touching("hot and cold (pins 2 and 3)"),
  "hot and screen shorted": touching("hot and screen (pins 2 and 1)"),
  "cold and screen shorted": touching("cold and screen (pins 3 and 1)"),
  "hot and cold exchanged": wrongOrder("hot and cold (pins 2 and 3) are exchanged"),
  "hot and screen exchanged": wrongOrder("hot and screen (pins 2 and 1) are exchanged"),
  "cold and screen exchanged": wrongOrder("cold and screen (pins 3 and 1) are exchanged"),
  "pins turned, 1 to 2": wrongOrder("the pins are turned, 1 to 2,"),
  "pins turned, 1 to 3": wrongOrder("the pins are turned, 1 to 3,"),
  "return open": words("the return is lost in @", hidden, twist),
  "microphone open": broken("microphone's contact"),
  "ring and second ring shorted": touching("ring and second ring"),
  "second ring and sleeve shorted": touching("second ring and sleeve"),
  "made for the other pin order": words(
    "@ is made for the other pin order: the return and the microphone are exchanged",
    hidden,
    "replace @ by one for this device's pin order",
  ),
  "adapter loose": words(
    "@ is loose, and its return touches nothing",
    "not screwed home",
    "screw @ home and push the plug into it until it clicks",
  ),
  "wheel uneven, left weaker": uneven("left"),
  "wheel uneven, right weaker": uneven("right"),
  "normal's tip open": oxidised("the normal's tip contact is open"),
  "normal's ring open": oxidised("the normal's ring contact is open"),
  "normal's tip of 10 kilohms": oxidised("the normal's tip contact has about 10 kΩ of oxide"),
  "normal's ring of 10 kilohms": oxidised("the normal's ring contact has about 10 kΩ of oxide"),
  "not home, return off": home("its return touches nothing"),
  "not home, ring on the insulator": home("its ring touches nothing"),
  "not home, both on the tip": home("both springs are on its tip"),
  "not home, first click": home("it stands at the first click"),
  "not home, sleeve on the ring": home("the sleeve spring is on its ring"),
  "lead with two contacts": words(
    "@ has two contacts at its plugs, where three are needed",
    "plugs with one black band (TS)",
    "take a TRS lead instead of @: two black bands at each plug",
  ),
  "both sides on one contact": words("both sides hang on one contact in @", hidden, replace),
  "legs exchanged": words(
    "the legs are made up the wrong way round in @: what is marked left is right",
    hidden,
    "plug the left leg of @ in where the right one belongs and the right one where the left one does, and mark them anew",
  ),
  "wrong socket": words(
    "@ is in the wrong socket",
    "in the wrong socket",
    "move @ to the socket it belongs in",
  ),
  "sides exchanged": words(
    "the two plugs of @ are in each other's sockets",
    "the two plugs exchanged",
    "exchange the two plugs of @; trust the sound, not the colour",
  ),
};
