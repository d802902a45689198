import type { NoChoice } from "#audio/outputs.ts";

const inTheSystem =
  "On a laptop or desktop open the system's sound settings, at the loudspeaker sign, and choose the output there; a phone or a tablet plays to what was plugged in last. Then come back and hear which it is.";

/** Why no output can be chosen here, and what to do instead. */
const noChoice: Readonly<Record<NoChoice, string>> = {
  "cannot choose": `This browser plays wherever the system says. ${inTheSystem}`,
  "not allowed": `The browser did not let the names be seen: there is no microphone, or it was not allowed. Allow it for this page in the browser's settings and ask again; or choose in the system. ${inTheSystem}`,
  none: `The browser names no output but the system's own. ${inTheSystem}`,
};

/** Whatever sounds: the presses that begin and end it, how loud it is, where it goes, and what to see to first. */
export const sounding = {
  play: "Play",
  again: "play again",
  stop: "stop it",
  handsOff: "Hands are off the gear",
  volumeBack: "The volume is back down",
  say: "say to them: point to where you hear it",
  bursts: { first: "first", second: "second" },
  softer: "softer",
  louder: "louder",
  startsQuietly: "It starts quietly.",
  onePress: "One press is 3 dB; hold it for more.",
  playsTo: (route: string) => `to ${route}`,
  system: "whatever the system plays to",
  pair: (first: number, second: number, device: string) =>
    `outputs ${first} and ${second} of ${device}`,
  noChoice,
  soFar: (long: string) => `${long} of sound here`,
  soFarLate: (long: string, late: number) => `${long} of sound here, ${late} ms late`,
  dose: (percent: number, cap: string) =>
    `${percent <= 1 ? "Under 1 %" : `Up to ${percent} %`} of a day's noise (85 dBA for 8 hours), with sensitive headphones on 1 V; a stronger amplifier makes it more. It never leaves the program above ${cap}, the red line.`,
  late: (late: number) =>
    `The sound reaches the ears ${late} ms after the program, later if wireless; so does silence.`,
  emergency: "In an emergency: the amplifier's knob, or take them off.",
  cautions: {
    bench: "Your own good headphones, L on the left ear, volume low.",
    volumes: "Everyone's volume at zero, then the signal on; they raise it themselves.",
    muted: "Are the PA, the stream and the recorder muted?",
    outMuted: "Are the PA, the stream and the recorder muted? This output may feed more than ears.",
    outVolumes: "Everyone's volume at zero, then the sound on; they raise it themselves.",
    own: "Your own good headphones in this device, L on the left ear, volume low: not the rig's feed.",
  },
  versions: {
    heard: "you hear this",
    key: (key: string) => `key ${key}`,
    making: "making the sound ready",
    makingReady: "making it ready",
    stop: "stop",
    refused: "There is nothing in this sound that may be played near ears. Take another one.",
  },
};
