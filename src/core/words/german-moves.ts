import type { MoveWords } from "./move-words.ts";

const ends = ["ganz nach links", "in die Mitte", "ganz nach rechts"];

/** Every move, as somebody is told to make it and as the log says it was made. */
export const moves: MoveWords = {
  "set right": {
    tell: ({ place }, name) => `Richtigstellen, was zu sehen ist: ${name(place)}`,
    told: ({ place }, name) => `richtiggestellt: ${name(place)}`,
  },
  replaced: {
    tell: ({ place }, name) => `Durch ein gutes ersetzen: ${name(place)}`,
    told: ({ place }, name) => `ersetzt: ${name(place)}`,
  },
  "plugged anew": {
    tell: ({ part }, name) => `Stecker von ${name(part)} fünfmal ziehen und ganz hineindrücken`,
    told: ({ part }, name) => `neu gesteckt: ${name(part)}`,
  },
  exchanged: {
    tell: ({ parts: [a, b] }, name) => `${name(a)} und ${name(b)} tauschen`,
    told: ({ parts: [a, b] }, name) => `getauscht: ${name(a)} und ${name(b)}`,
  },
  "known good in": {
    tell: ({ part }, name) => `Statt ${name(part)} etwas Geprüftes einstecken`,
    told: ({ part }, name) => `etwas Geprüftes statt ${name(part)}`,
  },
  "put back": {
    tell: ({ part }, name) => `${name(part)} zurückstecken wie vorher: Kommt der Fehler wieder?`,
    told: ({ part }, name) => `zurückgesteckt: ${name(part)}`,
  },
  moved: {
    tell: ({ part, into, socket }, name) =>
      `Stecker von ${name(part)} in ${name(`${into}, ${socket}`)} umstecken`,
    told: ({ part, into, socket }, name) =>
      `umgesteckt: ${name(part)}, jetzt in ${name(`${into}, ${socket}`)}`,
  },
  "turned round": {
    tell: () => "Den Kopfhörer auf dem Kopf umdrehen: jede Muschel ans andere Ohr",
    told: ({ position }, name) => `umgedreht: der Kopfhörer von ${name(position)}`,
  },
  set: {
    tell: ({ part, control, value }, name) =>
      `An ${name(part)} »${control}« ${ends[Math.sign(value) + 1]} drehen`,
    told: ({ part, control }, name) => `gedreht: »${control}« an ${name(part)}`,
  },
};
