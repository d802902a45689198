import type { Granted } from "#audio/granted.ts";
import type { Found, MeasurerTrouble } from "#audio/measurer.ts";
import type { NoInputs } from "#audio/recorder.ts";
import { first } from "#ui/words/english/first.ts";

const quietly = "it starts quietly";

/** Why nothing is measured, and what to do. */
export const measurerTroubleWords: Readonly<Record<MeasurerTrouble, string>> = {
  ...first.trouble,
  "no output":
    "There is no sound output with two sides. Plug one in or choose one in the system's settings, then start again.",
  suspended:
    "The browser holds the sound back. Start again; if that does not help, allow sound for this page in the browser.",
  lost: `The output or the input changed or stood still, so it was stopped. See that the right ones are chosen, then start again: ${quietly}.`,
  hidden: `The page was out of sight, so it was stopped. Start again when you are back: ${quietly}.`,
  gone: "The output or the input that was chosen has gone, so it was stopped. Plug it in again, or choose another.",
  "not that device":
    "The browser would not play to the output that was chosen. Choose it again, or let the system choose.",
  "not loaded":
    "The part that plays or records did not load. Look at the connection and start again; if that does not help, reload the page. Nothing is lost.",
  "cannot record":
    "This browser gives the page no input. Use another browser, or record elsewhere and bring the file.",
  "not allowed":
    "The input was not allowed. Allow the microphone for this page in the browser's settings (every input is called that there), and in the system's, then start again.",
  "no input": "The browser finds no input. Plug the interface in, then start again.",
  busy: "Another program holds the input, or it does not answer. Close that program, then start again.",
  muted:
    "The input is switched off: by a key, in the system, or by another program. Switch it on, then start again.",
  changed: `The input has other channels than a moment ago. See how it is set, then start again: ${quietly}.`,
  "nothing came":
    "The input was opened, and not one sample came. Unplug the interface and plug it in again, or choose another input.",
};

/** Why no inputs can be chosen from, and what to do. */
export const noInputsWords: Readonly<Record<NoInputs, string>> = {
  "cannot record": measurerTroubleWords["cannot record"],
  "not allowed":
    "The browser did not let the names be seen. Allow the microphone for this page in its settings (every input is called that there), and ask again.",
  "no input": "The browser names no input. Plug the interface in, and ask again.",
};

const processings = {
  echoCancellation: "cancels echoes",
  noiseSuppression: "takes noise away",
  autoGainControl: "moves the level by itself",
} as const;

/** What the browser does to the sound although it was asked not to; undefined where it leaves it alone. */
export const processedWords = ({ processed }: Granted): string | undefined =>
  processed.length === 0
    ? undefined
    : `The browser ${processed.map((one) => processings[one]).join(" and ")} on this input although it was asked not to: what comes in so is no measurement. Use another browser, or another input.`;

/** Which input it was, and what the browser gave: one line. */
export function grantedWords({ device, channels, rate, inputRate, unsaid }: Granted): string {
  const sides =
    channels === undefined ? "" : `${channels} ${channels === 1 ? "channel" : "channels"}, `;
  const from = inputRate === undefined || inputRate === rate ? "" : ` made of ${hertz(inputRate)}`;
  const silent = unsaid.length === 0 ? "" : "; whether it is processed the browser does not say";
  return `${device.name || "The system's own input"}: ${sides}${hertz(rate)}${from}${silent}.`;
}

const hertz = (rate: number): string => `${rate / 1000} kHz`;

const tooMuch =
  "Even the softest is too much for this input: it is cut off at the top. Turn the input's gain down, or set it to line level, and start again.";

/** Why the last start led to nothing: some trouble, or an input that is cut off at any level; undefined where it was only stopped. */
export function whyBefore(
  trouble: MeasurerTrouble | undefined,
  found: Found | undefined,
): string | undefined {
  if (trouble) return measurerTroubleWords[trouble];
  return found?.ended === "found" && found.found === "clipped" ? tooMuch : undefined;
}
