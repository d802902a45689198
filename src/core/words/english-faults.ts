import type { FaultName } from "#core/parts/fault-names.ts";
import type { FaultWords } from "./language.ts";

const words = (is: string, seen: string, mend: string): FaultWords => ({
  is: (where) => is.replace("@", where),
  seen,
  mend: (where) => mend.replace("@", where),
});

const twist = "replace @ by one known to be good; it may only want its contacts cleaned";
const replace = "replace @; mend it at the bench, not at soundcheck";
const wrongOrder = (how: string): FaultWords =>
  words(
    `${how} in @`,
    "cannot be seen",
    "replace @; it was wired wrongly and wants its plug rebuilt",
  );
const home = (what: string): FaultWords =>
  words(`@ is not home: ${what}`, "not pushed home", "push @ home until it clicks");
const knob = (is: string, seen: string, mend: string): FaultWords => words(is, seen, mend);

/** Common practice, no source, where a repair is named. */
export const faults: Readonly<Record<FaultName, FaultWords>> = {
  "tip open": words("the tip contact is open in @", "cannot be seen", twist),
  "ring open": words("the ring contact is open in @", "cannot be seen", twist),
  "sleeve open": words("the return is lost in @", "cannot be seen", twist),
  "tip and ring shorted": words("tip and ring touch in @", "cannot be seen", replace),
  "tip and sleeve shorted": words("tip and sleeve touch in @", "cannot be seen", replace),
  "ring and sleeve shorted": words("ring and sleeve touch in @", "cannot be seen", replace),
  "tip and ring exchanged": wrongOrder("tip and ring are exchanged"),
  "tip and sleeve exchanged": wrongOrder("tip and sleeve are exchanged"),
  "ring and sleeve exchanged": wrongOrder("ring and sleeve are exchanged"),
  "contacts turned, tip to ring": wrongOrder("the contacts are turned, tip to ring,"),
  "contacts turned, tip to sleeve": wrongOrder("the contacts are turned, tip to sleeve,"),
  "return of 3 ohms": words("the return has about 3 Ω of dirt in @", "cannot be seen", twist),
  "return of 10 ohms": words("the return has about 10 Ω of dirt in @", "cannot be seen", twist),
  "return of 30 ohms": words("the return has about 30 Ω of dirt in @", "cannot be seen", twist),
  "return of 300 ohms": words("the return has about 300 Ω of dirt in @", "cannot be seen", twist),
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
  "both sides on one contact": words(
    "both sides hang on one contact in @",
    "cannot be seen",
    replace,
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
  mono: knob("@ is switched to mono", "mono is on", "switch mono off at @"),
  "balance hard left": knob(
    "the balance of @ is hard left",
    "balance hard left",
    "set the balance of @ to the middle",
  ),
  "balance hard right": knob(
    "the balance of @ is hard right",
    "balance hard right",
    "set the balance of @ to the middle",
  ),
  "balance far to the left": knob(
    "the balance of @ is far to the left",
    "balance far to the left",
    "set the balance of @ to the middle",
  ),
  "balance far to the right": knob(
    "the balance of @ is far to the right",
    "balance far to the right",
    "set the balance of @ to the middle",
  ),
  "balance off to the left": knob(
    "the balance of @ is off to the left",
    "balance off to the left",
    "set the balance of @ to the middle",
  ),
  "balance off to the right": knob(
    "the balance of @ is off to the right",
    "balance off to the right",
    "set the balance of @ to the middle",
  ),
  "volume down": knob("the volume is down at @", "volume down", "bring the volume up slowly at @"),
  "power off": knob("@ is off", "no power", "turn its volumes down, then switch @ on"),
  "polarity button on the left": knob(
    "the polarity button of the left channel is in at @",
    "polarity button in, left channel",
    "release the polarity button at @",
  ),
  "polarity button on the right": knob(
    "the polarity button of the right channel is in at @",
    "polarity button in, right channel",
    "release the polarity button at @",
  ),
  "left panned hard right": knob(
    "the left channel is panned hard right at @",
    "left channel panned hard right",
    "pan the left channel of @ hard left",
  ),
  "right panned hard left": knob(
    "the right channel is panned hard left at @",
    "right channel panned hard left",
    "pan the right channel of @ hard right",
  ),
  "left panned to the middle": knob(
    "the left channel is panned to the middle at @",
    "left channel panned to the middle",
    "pan the left channel of @ hard left",
  ),
  "right panned to the middle": knob(
    "the right channel is panned to the middle at @",
    "right channel panned to the middle",
    "pan the right channel of @ hard right",
  ),
  "left soloed": knob(
    "the left channel is soloed at @ and takes the headphone socket over",
    "left channel soloed",
    "release solo at @",
  ),
  "right soloed": knob(
    "the right channel is soloed at @ and takes the headphone socket over",
    "right channel soloed",
    "release solo at @",
  ),
  "left channel down": knob(
    "the left channel is down or muted at @",
    "left channel down",
    "bring the left channel of @ up to match the right",
  ),
  "right channel down": knob(
    "the right channel is down or muted at @",
    "right channel down",
    "bring the right channel of @ up to match the left",
  ),
  "left driver dead": words("the left driver is dead in @", "cannot be seen", replace),
  "right driver dead": words("the right driver is dead in @", "cannot be seen", replace),
  "left driver inverted": words(
    "one side is inverted in @",
    "cannot be seen",
    "replace @; one cup was rewired the wrong way round",
  ),
  "right driver inverted": words(
    "one side is inverted in @",
    "cannot be seen",
    "replace @; one cup was rewired the wrong way round",
  ),
  "left side of the output dead": words(
    "the left side is dead at @",
    "cannot be seen",
    "use another output than @",
  ),
  "right side of the output dead": words(
    "the right side is dead at @",
    "cannot be seen",
    "use another output than @",
  ),
  "worn backwards": words(
    "@ wears the headphones the wrong way round",
    "L is on the right ear",
    "turn the headphones round: L on the left ear",
  ),
  "left ear hears less": words(
    "@ may hear less on the left",
    "cannot be seen",
    "check with headphones known to be good; this tests feeds, not hearing: whoever is worried should see a clinician",
  ),
  "right ear hears less": words(
    "@ may hear less on the right",
    "cannot be seen",
    "check with headphones known to be good; this tests feeds, not hearing: whoever is worried should see a clinician",
  ),
  "mirrors left and right": words(
    "@ takes left for right",
    "cannot be seen",
    "let somebody else take over from @; or ask which cup is touched, not left or right",
  ),
  "something not on the list": words(
    "it is something that is not on the list",
    "cannot be seen",
    "go along the chain with parts known to be good, one at a time",
  ),
};
