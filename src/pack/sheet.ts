import { type AnyName, everyName, everything } from "#core/signals/everything.ts";
import { instrumentNames } from "#core/signals/instruments.ts";
import type { DecibelsFullScale, Hertz } from "#core/units/units.ts";
import { signalWords } from "#core/words/english-signals.ts";

/** What stands above the list: sound in these files is as loud as the player makes it. */
const cautions = [
  "Everyone's volume at zero, then the sound on, then they raise it themselves.",
  "PA, stream and recorder muted before the first sound.",
  "Volume down before a hand touches a plug, a lead, a switch or an amplifier: after a repair it may be far louder.",
  "Files whose names begin with 'instruments' are measured or recorded, and never played to ears. The staircase ends at full scale.",
  "Ringing ears are a reason to stop.",
];

/** The name of a signal's file. */
export const fileName = (name: AnyName): string =>
  instrumentNames.some((one) => one === name) ? `instruments-${name}.wav` : `${name}.wav`;

/** A level, with its unit; of silence there is none. */
export const levelText = (decibels: DecibelsFullScale): string =>
  Number.isFinite(decibels) ? `${decibels.toFixed(1).replace("-", "−")} dBFS` : "none";

/** One signal: its file, what it is, what to hear, and what is known of it beforehand. */
function entryOf(name: AnyName, rate: Hertz): string {
  const { duration, level: rms, peak, loop } = everything[name];
  const { what, hear } = signalWords[name];
  const round = loop?.(rate);
  const again = round
    ? ` It may be looped from sample ${Math.round(round.from)} up to ${Math.round(round.to)}.`
    : "";
  return [
    fileName(name),
    `  ${what}.`,
    `  To hear: ${hear}`,
    `  ${duration.toFixed(2)} s; level ${levelText(rms)} RMS where it sounds, peak ${levelText(peak)}.${again}`,
  ].join("\n");
}

/** The sheet that goes with the files. */
export const sheet = (rate: Hertz): string =>
  [
    `Test signals, ${rate} Hz, two channels, 24 bits`,
    "",
    ...cautions.map((one) => `- ${one}`),
    "",
    "Levels are 20 log10 of the root mean square of one channel, a sample of full scale being 0.",
    "",
    ...everyName.map((name) => `${entryOf(name, rate)}\n`),
  ].join("\n");
