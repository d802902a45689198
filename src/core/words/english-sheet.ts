import type { SheetWords } from "./sheet-words.ts";

/** The sheet that goes with the sounds as files. */
export const sheet: SheetWords = {
  title: (rate) => `Test signals, ${rate} Hz, two channels, 24 bits`,
  cautions: [
    "Everyone's volume at zero, then the sound on, then they raise it themselves.",
    "PA, stream and recorder muted before the first sound.",
    "Volume down before a hand touches a plug, a lead, a switch or an amplifier: after a repair it may be far louder.",
    "Files whose names begin with 'instruments' are measured or recorded, and never played to ears. The staircase ends at full scale.",
    "Ringing ears are a reason to stop.",
  ],
  levels:
    "Levels are 20 log10 of the root mean square of one channel, a sample of full scale being 0.",
  level: (level) =>
    Number.isFinite(level) ? `${level.toFixed(1).replace("-", "−")} dBFS` : "none",
  toHear: (hear) => `To hear: ${hear}`,
  facts: (duration, level, peak) =>
    `${duration.toFixed(2)} s; level ${level} RMS where it sounds, peak ${peak}.`,
  loop: (from, to) => `It may be looped from sample ${from} up to ${to}.`,
};
