import type { OtherKind } from "./trouble.ts";
import type { RecordingWords } from "./words.ts";

const exportAgain = "Neu exportieren als WAV, PCM (16, 24 oder 32 Bit, oder Gleitkomma)";
const copyAgain = "Noch einmal kopieren, oder neu exportieren als WAV, PCM";

const writing = { text: "Text", "UTF-16 text": "UTF-16-Text" };
const kindWords = (kind: OtherKind): string =>
  typeof kind === "string" ? writing[kind] : kind.join(" oder ");

const trouble: RecordingWords["trouble"] = {
  empty: () => `Die Datei ist leer. ${copyAgain}.`,
  "other kind": (kind) => `Das ist kein WAV, sondern ${kindWords(kind)}. ${exportAgain}.`,
  "unknown kind": () =>
    `Das ist kein WAV und auch sonst keine Datei, die hier bekannt ist. ${exportAgain}.`,
  "big-endian": () =>
    `Das ist ein WAV mit umgekehrter Bytefolge (RIFX), das fast nichts liest. ${exportAgain}, Little Endian.`,
  "other RIFF": (form) =>
    `Das ist eine RIFF-Datei, aber ohne Ton${form === undefined ? "" : ` (${form})`}. ${exportAgain}.`,
  "cannot be read": () =>
    "Die Datei ist nicht mehr lesbar: Sie wurde inzwischen verschoben, geändert oder gekürzt, oder der Datenträger ist weg. Noch einmal wählen.",
  "header cut off": () => `Die Datei endet, bevor ihr Ton beginnt. ${copyAgain}.`,
  "no format": () =>
    `In der Datei steht nicht, wie ihre Samples geschrieben sind ('fmt ' fehlt). ${exportAgain}.`,
  "format too short": ({ bytes }) =>
    `Was in der Datei über ihre Samples steht, ist zu kurz (${bytes} Bytes in 'fmt '). ${exportAgain}.`,
  compressed: (by) =>
    `Der Ton in diesem WAV ist komprimiert (${"name" in by ? by.name : `Format ${by.format}`}), das verändert die Messung. ${exportAgain}.`,
  bits: ({ bits, float }) =>
    `Samples mit ${bits} Bit${float ? " als Gleitkomma" : ""} werden hier nicht gelesen. ${exportAgain}.`,
  "no channels": () => `Laut Datei hat sie keine Kanäle. ${exportAgain}.`,
  "too many channels": ({ channels }) =>
    `Die Datei hat ${channels} Kanäle, gelesen werden bis zu 8. Die zwei aufgenommenen exportieren, als WAV, PCM.`,
  "no rate": () => `Laut Datei hat sie keine Abtastrate. ${exportAgain}.`,
  rate: (found) =>
    `Die Datei hat eine Abtastrate von ${found.rate} Hz, gefunden wird das Signal bei 8000 bis 768000. Mit 48000 aufnehmen oder exportieren.`,
  "frame size": ({ is, should }) =>
    `Was in der Datei über ihre Samples steht, passt nicht zusammen: ${is} statt ${should} Bytes für alle Kanäle. ${exportAgain}.`,
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
