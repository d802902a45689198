import type { RecordingWords } from "./words.ts";

const exportAgain = "Neu exportieren als WAV, PCM (16, 24 oder 32 Bit, oder Gleitkomma)";
const copyAgain = "Noch einmal kopieren, oder neu exportieren als WAV, PCM";

/** What was found in a file: proper names and numbers, with what stands between them in German. */
const said = (found: string): string =>
  found
    .replace(" instead of ", " statt ")
    .replace(" or ", " oder ")
    .replace(", as floating point", ", als Gleitkomma")
    .replace(/^format /, "Format ")
    .replace("UTF-16 text", "UTF-16-Text")
    .replace(/^text$/, "Text");

const trouble: RecordingWords["trouble"] = {
  empty: () => `Die Datei ist leer. ${copyAgain}.`,
  "other kind": (kind) => `Das ist kein WAV, sondern ${said(kind)}. ${exportAgain}.`,
  "unknown kind": () =>
    `Das ist kein WAV und auch sonst keine Datei, die hier bekannt ist. ${exportAgain}.`,
  "big-endian": () =>
    `Das ist ein WAV mit umgekehrter Bytefolge (RIFX), das fast nichts liest. ${exportAgain}, Little Endian.`,
  "other RIFF": (form) =>
    `Das ist eine RIFF-Datei, aber ohne Ton${form === "" ? "" : ` (${form})`}. ${exportAgain}.`,
  "cannot be read": () =>
    "Die Datei ist nicht mehr lesbar: Sie wurde inzwischen verschoben, geändert oder gekürzt, oder der Datenträger ist weg. Noch einmal wählen.",
  "header cut off": () => `Die Datei endet, bevor ihr Ton beginnt. ${copyAgain}.`,
  "no format": () =>
    `In der Datei steht nicht, wie ihre Samples geschrieben sind ('fmt ' fehlt). ${exportAgain}.`,
  "format too short": (bytes) =>
    `Was in der Datei über ihre Samples steht, ist zu kurz (${bytes} Bytes in 'fmt '). ${exportAgain}.`,
  compressed: (name) =>
    `Der Ton in diesem WAV ist komprimiert (${said(name)}), das verändert die Messung. ${exportAgain}.`,
  bits: (bits) => `Samples mit ${said(bits)} Bit werden hier nicht gelesen. ${exportAgain}.`,
  "no channels": () => `Laut Datei hat sie keine Kanäle. ${exportAgain}.`,
  "too many channels": (count) =>
    `Die Datei hat ${count} Kanäle, gelesen werden bis zu 8. Die zwei aufgenommenen exportieren, als WAV, PCM.`,
  "no rate": () => `Laut Datei hat sie keine Abtastrate. ${exportAgain}.`,
  rate: (found) =>
    `Die Datei hat eine Abtastrate von ${found} Hz, gefunden wird das Signal bei 8000 bis 768000. Mit 48000 aufnehmen oder exportieren.`,
  "frame size": (found) =>
    `Was in der Datei über ihre Samples steht, passt nicht zusammen: ${said(found)} Bytes für alle Kanäle. ${exportAgain}.`,
  "no data": () => `In der Datei sind keine Samples ('data' fehlt). ${exportAgain}.`,
  "no samples": () =>
    "In der Datei sind keine Samples: Es wurde nichts aufgenommen, oder es wurde nicht gespeichert. Noch einmal aufnehmen.",
};

const odd: RecordingWords["odd"] = {
  "cut off": "Die Datei ist kürzer, als sie angibt; gelesen wurde bis zu ihrem Ende.",
  "length not written":
    "In der Datei steht nicht, wie lang sie ist, wie nach einem abgebrochenen Programm; gelesen wurde bis zu ihrem Ende.",
  "part of a frame": "Das letzte Sample ist nicht auf allen Kanälen; es wurde weggelassen.",
  "not numbers": "Einige Samples sind keine Zahlen; an ihrer Stelle steht Stille.",
};

function found(times: number, measured: number): string {
  if (times === 0)
    return "Das Signal ist nicht in dieser Aufnahme: Es heißt »multitone« und muss vom ersten Klick bis zum Ende gespielt werden.";
  const often = times === 1 ? "einmal" : `${times}-mal`;
  return measured < times
    ? `Das Signal ist ${often} in dieser Aufnahme; gemessen wurden die ersten ${measured}.`
    : `Das Signal ist ${often} in dieser Aufnahme.`;
}

/** What is said of a recording, in German. */
export const german: RecordingWords = { trouble, odd, found };
