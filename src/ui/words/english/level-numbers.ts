import type { FigureName } from "#core/level/figures.ts";
import type { SensitivityUnit } from "#core/level/sensitivity.ts";

type Numbers = FigureName | "ohms" | "output ohms" | "peak ohms";

const figures: Readonly<Record<Numbers, string>> = {
  "most volts": "the most it gives",
  gain: "gain, its knob all the way up",
  "input noise": "noise before its knob",
  "output noise": "noise behind its knob",
  "most input volts": "the most its input takes",
  sensitivity: "sensitivity",
  ohms: "impedance of each side",
  "output ohms": "output impedance",
  "peak ohms": "highest impedance, where it resonates",
};

const hints: Readonly<Record<Numbers, string>> = {
  "most volts": "As its sheet has it, of one leg: 4 V, +14 dBu, or a power such as 80 mW in 32 Ω.",
  gain: "In decibels: 14.",
  "input noise": "From 20 Hz to 20 kHz: 4 µV or −106 dBu.",
  "output noise": "With the knob down: 8 µV or −100 dBu.",
  "most input volts": "4 V or +14 dBu.",
  sensitivity: "With its unit: 100 dB/mW or 112 dB/V.",
  ohms: "In ohms: 32.",
  "output ohms": "In ohms: 10.",
  "peak ohms": "In ohms: 60. A curve in its sheet shows it, mostly in the bass.",
};

const units: Readonly<Record<SensitivityUnit, string>> = {
  "dB/mW": "of a milliwatt",
  "dB/V": "of a volt",
  dB: "it does not say",
};

/** Numbers of gear, as they are typed. */
export const levelNumbers = {
  close: "close",
  typeWhatYouKnow: "Type what you know; the rest stays as is usual. An emptied field is forgotten.",
  figures,
  hints,
  usual: (typical: string, low: string, high: string, unit: string) =>
    `Usual: ${typical} ${unit}; eight in ten lie between ${low} and ${high}.`,
  thatIs: (value: string) => `That is ${value}.`,
  notUnderstood: (text: string, hint: string) =>
    `'${text}' is no number that is understood here. ${hint}`,
  cannotBe: (value: string, least: string, most: string) =>
    `${value} cannot be: from ${least} to ${most} is understood.`,
  ofWhat: "Of what the sheet says it",
  units,
  doubt: {
    less: (by: string) =>
      `The sheet does not say of what. It is taken as of a milliwatt; if it is of a volt, it is ${by} dB less.`,
    more: (by: string) =>
      `The sheet does not say of what. It is taken as of a milliwatt; if it is of a volt, it is ${by} dB more.`,
    notOfMilliwatt: (perVolt: string) =>
      `That would be ${perVolt} dB of a volt, which hardly any headphones make: it may be of a volt already.`,
    notOfVolt: (perMilliwatt: string) =>
      `That would be ${perMilliwatt} dB of a milliwatt, which is very little: it may be of a milliwatt.`,
  },
};
