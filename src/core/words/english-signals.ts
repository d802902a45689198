import type { Language } from "./language.ts";

/** Every sound: what it is, and what to hear or to read. */
export const signalWords: Language["signals"] = {
  "left-ident": {
    what: "One knock on the left, twice",
    hear: "In the left ear alone.",
  },
  "right-ident": {
    what: "Two quick knocks on the right, twice",
    hear: "In the right ear alone, as loud as the left one.",
  },
  "burst-pair": {
    what: "Two bursts of low noise: one the same on both sides, one with the right side upside down",
    hear: "The first in the middle of the head, the second all round. A mono sum loses the second, a lost return the first.",
  },
  silence: {
    what: "Nothing, for a second and a half",
    hear: "Hiss and hum of the chain alone; whoever hears a side is guessing.",
  },
  "line-up": {
    what: "Line-up tone: 1 kHz at −18 dBFS on both channels, ten seconds",
    hear: "One steady tone. It sets levels from one device to the next (EBU R68, ITU-R BS.645).",
  },
  "stereo-ident": {
    what: "Stereo identification: line-up tone, the left broken for a quarter of a second every three seconds (EBU R49)",
    hear: "The side that is broken is the left. In mono the level dips; with one leg upside down there is silence but in the breaks.",
  },
  "line-ident": {
    what: "Two-channel line identification: every four seconds the left is broken once, then the right twice",
    hear: "One break on the left, two on the right.",
  },
  "high-pair": {
    what: "Two bursts of high noise: the same, and upside down on the right",
    hear: "Both alike: so high, polarity is not heard, and what differs is level.",
  },
  "high-left": {
    what: "One burst of high noise on the left, twice",
    hear: "In the left ear alone.",
  },
  "high-right": {
    what: "Two bursts of high noise on the right, twice",
    hear: "In the right ear alone, as bright as the left one.",
  },
  "polarity-pulse": {
    what: "A wave that is tall and narrow upwards, on both channels",
    hear: "For a scope or a meter: tall upwards is the right way up. No ear hears the difference.",
  },
  "pink-noise": {
    what: "Pink noise: equal power in each octave from 20 Hz to 20 kHz, both channels alike",
    hear: "In the middle of the head, neither dull nor sharp.",
  },
  "white-noise": {
    what: "White noise: equal power in each hertz from 20 Hz to 20 kHz, both channels alike",
    hear: "In the middle of the head; brighter than pink.",
  },
  "balance-tone": {
    what: "Noise of the middle range, the same on both channels",
    hear: "In the middle. Off to one side: that side is louder by some decibels.",
  },
  rotation: {
    what: "Left, right, middle, round and round, 300 ms each",
    hear: "Whatever drops out while a plug or a lead is moved.",
  },
  "buzz-search": {
    what: "A tone that glides from 30 to 500 Hz and back",
    hear: "A smooth tone: what buzzes or rattles gives itself away. Volume back down afterwards.",
  },
  "seal-check": {
    what: "60 Hz, then 500 Hz, at one level, twice",
    hear: "Both about as strong. The low one gone: the cup or the tip does not seal.",
  },
  click: {
    what: "A click on both channels at one instant, every half second",
    hear: "In the middle. Off to one side at equal loudness: the other side is late.",
  },
  "hum-50": {
    what: "A mains hum of 50 Hz with its harmonics",
    hear: "Does the hum you hear sound like this one? Volume back down afterwards.",
  },
  "hum-60": {
    what: "A mains hum of 60 Hz with its harmonics",
    hear: "Does the hum you hear sound like this one? Volume back down afterwards.",
  },
  sweep: {
    what: "An exponential sweep from 20 Hz to 20 kHz in six seconds, both channels. Not for ears",
    hear: "To be recorded: the response of what it went through.",
  },
  multitone: {
    what: "Two clicks, then a comb of tones on each channel, then the combs exchanged. Not for ears",
    hear: "To be recorded: what each side gets of each.",
  },
  "flex-tones": {
    what: "Two tones on the left, two others on the right. Not for ears",
    hear: "To be watched while a lead is bent.",
  },
  staircase: {
    what: "1 kHz, 3 dB louder every second up to full scale. NEVER ON EARS",
    hear: "To be read: at which step does the clip lamp light? Headphones off, everything after it muted.",
  },
};
