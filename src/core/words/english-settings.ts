import type { settingNames } from "#core/parts/names-settings.ts";
import { farSettings } from "./english-far-settings.ts";
import { words } from "./fault-words.ts";
import type { FaultWords } from "./language.ts";

/** Common practice, no source, where a repair is named. */
export const settings: Readonly<Record<(typeof settingNames)[number], FaultWords>> = {
  mono: words("@ is switched to mono", "mono is on", "switch mono off at @"),
  "balance hard left": words(
    "the balance of @ is hard left",
    "balance hard left",
    "set the balance of @ to the middle",
  ),
  "balance hard right": words(
    "the balance of @ is hard right",
    "balance hard right",
    "set the balance of @ to the middle",
  ),
  "balance far to the left": words(
    "the balance of @ is far to the left",
    "balance far to the left",
    "set the balance of @ to the middle",
  ),
  "balance far to the right": words(
    "the balance of @ is far to the right",
    "balance far to the right",
    "set the balance of @ to the middle",
  ),
  "balance off to the left": words(
    "the balance of @ is off to the left",
    "balance off to the left",
    "set the balance of @ to the middle",
  ),
  "balance off to the right": words(
    "the balance of @ is off to the right",
    "balance off to the right",
    "set the balance of @ to the middle",
  ),
  "volume down": words("the volume is down at @", "volume down", "bring the volume up slowly at @"),
  "power off": words("@ is off", "no power", "turn its volumes down, then switch @ on"),
  "polarity button on the left": words(
    "the polarity button of the left channel is in at @",
    "polarity button in, left channel",
    "release the polarity button at @",
  ),
  "polarity button on the right": words(
    "the polarity button of the right channel is in at @",
    "polarity button in, right channel",
    "release the polarity button at @",
  ),
  "left panned hard right": words(
    "the left channel is panned hard right at @",
    "left channel panned hard right",
    "pan the left channel of @ hard left",
  ),
  "right panned hard left": words(
    "the right channel is panned hard left at @",
    "right channel panned hard left",
    "pan the right channel of @ hard right",
  ),
  "left panned to the middle": words(
    "the left channel is panned to the middle at @",
    "left channel panned to the middle",
    "pan the left channel of @ hard left",
  ),
  "right panned to the middle": words(
    "the right channel is panned to the middle at @",
    "right channel panned to the middle",
    "pan the right channel of @ hard right",
  ),
  "left soloed": words(
    "the left channel is soloed at @ and takes the headphone socket over",
    "left channel soloed",
    "release solo at @",
  ),
  "right soloed": words(
    "the right channel is soloed at @ and takes the headphone socket over",
    "right channel soloed",
    "release solo at @",
  ),
  "left channel down": words(
    "the left channel is down or muted at @",
    "left channel down",
    "bring the left channel of @ up to match the right",
  ),
  "right channel down": words(
    "the right channel is down or muted at @",
    "right channel down",
    "bring the right channel of @ up to match the left",
  ),
  "both channels panned to the middle": words(
    "both channels are panned to the middle at @",
    "both channels panned to the middle",
    "pan the left channel of @ hard left and the right one hard right",
  ),
  "both channels panned left": words(
    "both channels are panned left at @",
    "both channels panned left",
    "pan the right channel of @ hard right",
  ),
  "both channels panned right": words(
    "both channels are panned right at @",
    "both channels panned right",
    "pan the left channel of @ hard left",
  ),
  "pad in on the left channel": words(
    "the pad of the left channel is in at @",
    "pad in, left channel",
    "turn the left channel of @ down, then release its pad",
  ),
  "pad in on the right channel": words(
    "the pad of the right channel is in at @",
    "pad in, right channel",
    "turn the right channel of @ down, then release its pad",
  ),
  "main fader down": words(
    "the main fader is down at @",
    "main fader down",
    "bring the main fader of @ up slowly, or feed from a socket that does not hang on it",
  ),
  "monitor knob down": words(
    "the monitor knob is down at @",
    "monitor knob down",
    "bring the monitor knob of @ up slowly",
  ),
  "send knob down": words(
    "the send is down at @",
    "send knob down",
    "bring the send of @ up slowly",
  ),
  "dim on": words(
    "dim is on at @",
    "dim is on",
    "turn the monitor knob down, then switch dim off at @",
  ),
  "call holds the output in mono": words(
    "a call or an open microphone holds the output of @ in mono",
    "a call or an open microphone on the screen",
    "end the call or close the microphone at @",
  ),
  "application fills the left side only": words(
    "the application fills only the left side at @",
    "only the left meter moves",
    "set the application to stereo at @, or play from another one",
  ),
  "application fills the right side only": words(
    "the application fills only the right side at @",
    "only the right meter moves",
    "set the application to stereo at @, or play from another one",
  ),
  "wrong output device": words(
    "@ plays to another output device",
    "another output device chosen",
    "choose the device of this feed as output at @",
  ),
  "wrong output pair": words(
    "the application plays to another pair of outputs of @",
    "another output pair chosen",
    "choose the first pair of outputs of @ in the application",
  ),
  "direct monitor turned to the inputs": words(
    "the direct monitor of @ is turned to its inputs, away from the playback",
    "direct monitor over to the inputs",
    "turn the direct monitor of @ back towards the playback, slowly",
  ),
  ...farSettings,
};
