import { capital } from "#core/report/phrases.ts";
import type { Words } from "#ui/words/use-words.ts";

export const listening: Words["listening"] = {
  titles: { plan: "Anhören vor dem Einstecken", faults: "Hören, wie Fehler klingen" },
  healthy: "in Ordnung",
  faulty: "mit Fehler",
  straight: "ohne alles dazwischen",
  asItWillBe: "wie es sein wird",
  thisRig: "dieser Aufbau, in Ordnung",
  asDrawn: "Wie gezeichnet, nichts defekt.",
  nothingYet: "Noch ist nichts falsch. Unten auf ein Teil zeigen.",
  what: "Was ist falsch?",
  place: (place) => place.replace(/[»«]/g, ""),
  briefly: (fault, place) =>
    capital(
      fault
        .replace(`in ${place}`, "hier")
        .replace(`an ${place}`, "hier")
        .replace(` von ${place}`, "")
        .replace(`${place} `, "")
        .replace(" (Stecker)", ""),
    ),
};

export const training: Words["training"] = {
  title: "Welcher Fehler ist zu hören?",
  making: "Die Runde wird vorbereitet.",
  seat: "ein Platz",
  you: "Sie",
  whatWas: "das war es",
  whatIsIt: "was ist das?",
  right: (fault) => `Richtig: ${fault}.`,
  wrong: (fault) => `Nein, es war: ${fault}.`,
  listenAgain: "Noch einmal hören, wenn gewünscht.",
  next: "der nächste",
  wasThis: { heard: "das war es: gerade zu hören", again: "das war es: noch einmal anhören" },
  tookThis: {
    heard: "dafür gehalten: gerade zu hören",
    again: "dafür gehalten: noch einmal anhören",
  },
  score: (heard, named) => `${heard} gehört, ${named} erkannt`,
  tally: (fault, right, asked) => `${fault}: ${right} von ${asked}`,
  takenFor: (fault) => `verwechselt mit: ${fault}`,
};
