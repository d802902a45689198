import { decimal } from "./german-numbers.ts";
import type { Language } from "./language.ts";

/** Why a capture is not judged, and what to do: sentences, of what was measured and the bound that it broke. */
export const refusals: Language["refusals"] = {
  rate: (rate) =>
    `Bei einer Abtastrate von ${rate} Hz passen zu wenige Töne hinein. Mit 44100 Hz oder mehr aufnehmen.`,
  "not finite": (count) =>
    `${count} Abtastwerte sind keine Zahlen. Noch einmal aufnehmen, oder als PCM exportieren.`,
  silent: () =>
    "Da ist nur Stille. Nachsehen, ob der richtige Eingang aufgenommen wurde, und mit welchem Pegel.",
  "too quiet": () =>
    "Das Signal fehlt oder liegt zu tief im Rauschen. Lauter drehen oder den Eingang näher bringen, und noch einmal aufnehmen.",
  "cut short": () =>
    "Keiner der beiden Abschnitte des Signals ist ganz da. Von vor den Klicks bis zum Ende aufnehmen.",
  mono: () =>
    "Die Aufnahme ist mono: Beide Kanäle sind gleich, oder einer ist tot, während der andere rauscht. Zwei Kanäle aufnehmen, ohne dass etwas sie summiert.",
  clipped: (part) =>
    `Die Spitzen sind abgeschnitten (${decimal(100 * part, 2)} % der Abtastwerte). Den Eingang leiser drehen und noch einmal aufnehmen.`,
  gaps: (seconds) =>
    `Abtastwerte fehlen oder sind doppelt (${decimal(1000 * seconds, 0)} ms). Schließen, was sonst läuft, und noch einmal aufnehmen.`,
  clocks: () =>
    "Die Takte von Wiedergabe und Aufnahme laufen nicht im festen Verhältnis. Mit einem Gerät abspielen und aufnehmen, oder andere wählen.",
  processed: (by) =>
    `Der Pegel ändert sich von selbst (${decimal(by, 1)} dB): Etwas bearbeitet den Ton. Echounterdrückung, Rauschunterdrückung und automatische Aussteuerung ausschalten.`,
};
