import type { settingNames } from "#core/parts/names-settings.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

const delayed = (side: string, how: string): FaultWords =>
  words(
    `the ${side} side arrives ${how} late at @`,
    "cannot be seen",
    `set the delay of the ${side} side of @ to that of the other`,
  );
const subscription = (is: string, seen: string): FaultWords =>
  words(is, seen, "subscribe left to left and right to right at @");

/** Settings of players, links, radio and processors. Common practice, no source, where a repair is named. */
export const farSettings = {
  "left channel chosen for both": words(
    "@ plays the left channel on both sides",
    "left channel chosen",
    "set @ back to stereo",
  ),
  "right channel chosen for both": words(
    "@ plays the right channel on both sides",
    "right channel chosen",
    "set @ back to stereo",
  ),
  "blend turned away from the feed": words(
    "the blend knob of @ is turned away from the feed",
    "blend knob over to the other input",
    "turn the blend knob of @ back to the feed, slowly",
  ),
  "width turned up": words(
    "the width of @ is turned up: the middle is thin",
    "width turned up",
    "set the width of @ to neutral, or bypass it",
  ),
  "width at nothing": words(
    "the width of @ is at nothing: both sides are the same",
    "width at nothing",
    "set the width of @ to neutral, or bypass it",
  ),
  "left side subscribed twice": subscription(
    "@ takes the left side of the link twice",
    "both sides subscribed to the left",
  ),
  "right side subscribed twice": subscription(
    "@ takes the right side of the link twice",
    "both sides subscribed to the right",
  ),
  "left side not subscribed": subscription(
    "@ does not take the left side of the link",
    "left side not subscribed",
  ),
  "right side not subscribed": subscription(
    "@ does not take the right side of the link",
    "right side not subscribed",
  ),
  "sides exchanged in the digital patch": subscription(
    "left and right are exchanged in the digital patch of @",
    "left and right exchanged in the patch",
  ),
  "nothing subscribed": subscription("@ takes nothing from the link", "nothing subscribed"),
  "left side 0.3 ms late": delayed("left", "0.3 ms"),
  "left side 1 ms late": delayed("left", "1 ms"),
  "right side 0.3 ms late": delayed("right", "0.3 ms"),
  "right side 1 ms late": delayed("right", "1 ms"),
  "only the left input fed": words(
    "only the left input of @ is fed",
    "nothing in the right input",
    "bring the right side of the feed to the right input of @",
  ),
  "tuned to another channel": words(
    "@ is tuned to another channel than its transmitter",
    "the channel numbers differ",
    "turn its volume down, then tune @ to its transmitter",
  ),
  "call profile in both ears": words(
    "@ is in its call profile: mono, and dull",
    "a call or an open microphone on the screen",
    "close whatever holds the microphone of @ open",
  ),
  "call profile in one ear": words(
    "@ is in its call profile, in one ear only",
    "a call or an open microphone on the screen",
    "close whatever holds the microphone of @ open",
  ),
  "joined to another device": words(
    "@ is joined to another device",
    "shown as joined elsewhere",
    "turn its volume down, then join @ to the source",
  ),
} satisfies Readonly<Partial<Record<(typeof settingNames)[number], FaultWords>>>;
