import type { Language } from "./language.ts";

const decibels = (value: number): string => `${value.toFixed(1).replace("-", "−")} dB`;

/** Why a capture is not judged, and what to do: sentences, of what was measured and the bound that it broke. */
export const refusals: Language["refusals"] = {
  rate: (rate) => `At a sampling rate of ${rate} Hz too few tones fit. Record at 44100 Hz or more.`,
  "not finite": (count) => `${count} samples are no numbers. Record again, or export as PCM.`,
  silent: () =>
    "There is nothing but silence. Look whether the right input was recorded, and at which level.",
  "too quiet": () =>
    "The signal is not there, or too deep in the noise. Turn it up, or bring the input nearer, and record again.",
  "cut short": () =>
    "Neither of the signal's two stretches is there from end to end. Record from before its clicks until it is over.",
  mono: () =>
    "The recording is mono: both channels are one and the same, or one of them is dead while the other hisses. Record two channels, with nothing that sums them.",
  clipped: (part) =>
    `Tops are cut off flat (${(100 * part).toFixed(2)} % of the samples). Turn the input down and record again.`,
  gaps: (seconds) =>
    `Samples are missing, or there twice (${(1000 * seconds).toFixed(0)} ms). Close what else runs and record again.`,
  clocks: () =>
    "The clocks of player and recorder do not keep one ratio. Play and record with one device, or choose other ones.",
  processed: (by) =>
    `The level changes by itself (${decibels(by)}): something processes the sound. Turn off echo cancelling, noise suppression and automatic gain.`,
};
