import type { wearingNames } from "#core/parts/names-wearing.ts";
import { replace, words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

/** Which side is upside down cannot be heard, so neither is named. */
const oneInverted = words(
  "one side is inverted in @",
  "cannot be seen",
  "replace @; one cup was rewired the wrong way round",
);
const hearsLess = (side: string): FaultWords =>
  words(
    `@ may hear less on the ${side}`,
    "cannot be seen",
    "check with headphones known to be good; this tests feeds, not hearing: whoever is worried should see a clinician",
  );
const driver = (how: string): FaultWords => words(`${how} in @`, "cannot be seen", replace);
const weak = (side: string): FaultWords =>
  words(
    `the ${side} driver is weak in @, from water or age`,
    "cannot be seen",
    "replace @; let it dry, and check it again at the bench",
  );
const reversedPins = words(
  "one side is inverted in @: its two-pin plug was pushed in the wrong way round",
  "cannot be seen",
  "pull one side's two-pin plug out of the earpiece of @ and push it in the other way round; listen; if it is worse, put it back and turn the other one",
);
const atTheEar = (side: string): FaultWords =>
  words(
    `the cable of @ is broken at the ${side} ear`,
    "cannot be seen",
    "put another cable on @; it breaks where it bends over the ear",
  );
const dirtyPins = (side: string): FaultWords =>
  words(
    `the two pins on the ${side} are dirty in @`,
    "cannot be seen",
    "pull the two-pin plug out of the earpiece of @ and push it in again, a few times",
  );
const sealLost = (where: string): FaultWords =>
  words(
    `the tip of @ does not seal ${where}: weak, and no bass`,
    "sits loose in the ear",
    "let the wearer press @ home, or take tips of another size",
  );
const wax = (side: string): FaultWords =>
  words(
    `wax covers the ${side} grille of @`,
    "wax in the grille",
    "let the wearer clean @, or change its filter",
  );

/** Common practice, no source, where a repair is named. */
export const wearing: Readonly<Record<(typeof wearingNames)[number], FaultWords>> = {
  "left driver dead": driver("the left driver is dead"),
  "right driver dead": driver("the right driver is dead"),
  "left driver inverted": oneInverted,
  "right driver inverted": oneInverted,
  "both drivers inverted": words(
    "both sides are inverted in @",
    "cannot be seen",
    "nothing is heard of it; replace @ where it is compared with another set",
  ),
  "left driver weak": weak("left"),
  "right driver weak": weak("right"),
  "left voice coil shorted": driver("the left voice coil is shorted"),
  "right voice coil shorted": driver("the right voice coil is shorted"),
  "pin order of the other kind": words(
    "@ has the other order of contacts than its socket wants",
    "cannot be seen",
    "take another set, or put an adapter that crosses the two rear contacts on @; the sound comes back while the microphone button is held",
  ),
  "microphone button stuck": words(
    "the microphone button is stuck in @",
    "cannot be seen",
    "press the microphone button of @ a few times; if nobody hears the talker then, replace it",
  ),
  "left low driver dead": driver("the left low driver is dead"),
  "right low driver dead": driver("the right low driver is dead"),
  "left high driver dead": driver("the left high driver is dead"),
  "right high driver dead": driver("the right high driver is dead"),
  "left two-pin plug reversed": reversedPins,
  "right two-pin plug reversed": reversedPins,
  "left cable broken at the ear": atTheEar("left"),
  "right cable broken at the ear": atTheEar("right"),
  "left pins dirty": dirtyPins("left"),
  "right pins dirty": dirtyPins("right"),
  "earpieces exchanged": words(
    "the earpieces are on each other's cable in @",
    "L hangs on the right leg",
    "put each earpiece of @ on its own cable; trust the sound, not the letter",
  ),
  "left seal lost": sealLost("on the left"),
  "right seal lost": sealLost("on the right"),
  "both seals lost": sealLost("on either side"),
  "wax on the left": wax("left"),
  "wax on the right": wax("right"),
  "worn backwards": words(
    "@ wears the headphones the wrong way round",
    "L is on the right ear",
    "turn the headphones round: L on the left ear",
  ),
  "left ear hears less": hearsLess("left"),
  "right ear hears less": hearsLess("right"),
  "mirrors left and right": words(
    "@ takes left for right",
    "cannot be seen",
    "let somebody else take over from @; or ask which cup is touched, not left or right",
  ),
};
