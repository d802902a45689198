import type { OtherKind } from "./trouble.ts";
import type { RecordingWords } from "./words.ts";

const exportAgain = "Export it as WAV, PCM (16, 24 or 32 bits, or floating point)";
const copyAgain = "Copy it again, or export it again as WAV, PCM";

const kindWords = (kind: OtherKind): string =>
  typeof kind === "string" ? kind : kind.join(" or ");

const trouble: RecordingWords["trouble"] = {
  empty: () => `The file is empty. ${copyAgain}.`,
  "other kind": (kind) => `This is no WAV but ${kindWords(kind)}. ${exportAgain}.`,
  "unknown kind": () => `This is no WAV, nor any kind of file known here. ${exportAgain}.`,
  "big-endian": () =>
    `This is a WAV with its bytes the other way round (RIFX), which hardly anything reads. ${exportAgain}, little-endian.`,
  "other RIFF": (form) =>
    `This is a RIFF file, but not of sound${form === undefined ? "" : ` (${form})`}. ${exportAgain}.`,
  "cannot be read": () =>
    "The file can be read no more: it was moved, changed or shortened meanwhile, or its disk is gone. Choose it again.",
  "header cut off": () => `The file ends before its sound begins. ${copyAgain}.`,
  "no format": () =>
    `The file does not say how its samples are written ('fmt ' is missing). ${exportAgain}.`,
  "format too short": ({ bytes }) =>
    `What the file says of its samples is too short (${bytes} bytes in 'fmt '). ${exportAgain}.`,
  compressed: (by) =>
    `The sound in this WAV is compressed (${"name" in by ? by.name : `format ${by.format}`}), which changes what is measured. ${exportAgain}.`,
  bits: ({ bits, float }) =>
    `Samples of ${bits} bits${float ? ", as floating point," : ""} are not read here. ${exportAgain}.`,
  "no channels": () => `The file says that it has no channels. ${exportAgain}.`,
  "too many channels": ({ channels }) =>
    `The file has ${channels} channels, and up to 8 are read. Export the two that were recorded, as WAV, PCM.`,
  "no rate": () => `The file says that it has no sampling rate. ${exportAgain}.`,
  rate: (found) =>
    `The file has a sampling rate of ${found.rate} Hz, and the signal is found at 8000 to 768000. Record or export it at 48000.`,
  "frame size": ({ is, should }) =>
    `What the file says of its samples does not agree: ${is} instead of ${should} bytes for all channels. ${exportAgain}.`,
  "no data": () => `There are no samples in the file ('data' is missing). ${exportAgain}.`,
  "no samples": () =>
    `There are no samples in the file: nothing was recorded, or it was not saved. Record again.`,
};

const odd: RecordingWords["odd"] = {
  "cut off": "The file ends before the length that it claims; it was read to its end.",
  "length not written":
    "The file does not say how long it is, as after a program that was cut off; it was read to its end.",
  "part of a frame": "The last sample is not on all channels; it was left out.",
  "not numbers": "Some samples are no numbers; silence stands in their place.",
};

function found(times: number, measured: number): string {
  if (times === 0)
    return "The signal is not in this recording: it is 'multitone', to be played from its first click to its end.";
  const often = times === 1 ? "once" : `${times} times`;
  return measured < times
    ? `The signal is in this recording ${often}; the first ${measured} were measured.`
    : `The signal is in this recording ${often}.`;
}

/** What is said of a recording, in English. */
export const english: RecordingWords = { trouble, odd, found };
