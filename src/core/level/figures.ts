import type { PartKind } from "#core/parts/catalogue.ts";
import type { SensitivityUnit } from "./sensitivity.ts";

/** What is known of gear in numbers besides its circuit. They stand among a part's settings, each by this name; an output's own after the socket's name. */
export const figureNames = [
  "most volts",
  "gain",
  "input noise",
  "output noise",
  "most input volts",
  "sensitivity",
] as const;
export type FigureName = (typeof figureNames)[number];

/** A number of gear: what is usual, and between what eight in ten lie. */
export interface Usual {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

/** Volts RMS of a sine; decibels; microvolts RMS from 20 Hz to 20 kHz. What is understood of each. */
export const bounds: Readonly<
  Record<
    FigureName,
    { readonly unit: "V" | "dB" | "µV"; readonly least: number; readonly most: number }
  >
> = {
  "most volts": { unit: "V", least: 0.01, most: 100 },
  gain: { unit: "dB", least: -60, most: 60 },
  "input noise": { unit: "µV", least: 0.01, most: 1e5 },
  "output noise": { unit: "µV", least: 0.01, most: 1e5 },
  "most input volts": { unit: "V", least: 0.01, most: 100 },
  sensitivity: { unit: "dB", least: 50, most: 150 },
};

/** Decibels lie about their middle; the rest by how many times. */
export const inDecibels = (name: FigureName): boolean => bounds[name].unit === "dB";

/**
 * What a stage is: the most it gives on one leg with nothing on it, its gain with the knob all the way up, the noise ahead of its knob (at its input; of
 * a source at its output, all the way up), the noise behind it at the output, and the most its input takes.
 */
type StageFigures = Readonly<Record<Exclude<FigureName, "sensitivity">, Usual>>;

const usual = (low: number, typical: number, high: number): Usual => ({ low, typical, high });
const none = usual(0, 0, 0);

/** A source sends what it has: full scale is the most it gives. What is fed from another box has a gain in front. */
const source = (most: Usual, input: Usual, output: Usual, gain = none): StageFigures => ({
  "most volts": most,
  gain,
  "input noise": input,
  "output noise": output,
  "most input volts": usual(3, 6, 12),
});

/** All of these: common practice, no source. Who has the data sheet says better. */
const stages = {
  "line output": source(usual(2, 4, 8), usual(8, 25, 80), usual(4, 10, 30), usual(0, 8, 16)),
  "headphone output": source(usual(1, 2.5, 6), usual(6, 20, 60), usual(3, 8, 25), usual(0, 8, 16)),
  "pocket output": source(usual(0.5, 0.9, 1.5), usual(3, 8, 25), usual(2, 5, 15)),
  "disc output": source(usual(1.5, 2, 2.5), usual(6, 15, 50), usual(1, 2, 6)),
  // Full scale of radio or a digital link is written as one volt.
  link: source(usual(1, 1, 1), usual(5, 15, 60), usual(0.1, 0.2, 0.5)),
  "headphone amplifier": {
    "most volts": usual(2, 4, 8),
    gain: usual(6, 14, 22),
    "input noise": usual(2, 4, 10),
    "output noise": usual(3, 8, 30),
    "most input volts": usual(2, 6, 12),
  },
  "worn amplifier": {
    "most volts": usual(0.7, 1.2, 2.5),
    gain: usual(-3, 2, 8),
    "input noise": usual(5, 20, 80),
    "output noise": usual(3, 8, 30),
    "most input volts": usual(1, 1, 1),
  },
  "loudspeaker amplifier": {
    "most volts": usual(12, 25, 50),
    gain: usual(26, 30, 36),
    "input noise": usual(2, 5, 15),
    "output noise": usual(60, 150, 500),
    "most input volts": usual(3, 6, 12),
  },
} as const satisfies Readonly<Record<string, StageFigures>>;
type StageName = keyof typeof stages;

const ofKind: Readonly<Partial<Record<PartKind, StageName>>> = {
  laptop: "pocket output",
  phone: "pocket output",
  player: "disc output",
  "headphone amplifier": "headphone amplifier",
  "belt pack": "worn amplifier",
  "personal mixer": "worn amplifier",
  "loudspeaker amplifier": "loudspeaker amplifier",
};

/** What is usual of a stage, by its kind and by what leaves it. */
export function stageOf(kind: PartKind, out: { readonly link: boolean; readonly phones: boolean }) {
  if (out.link) return stages.link;
  const name = ofKind[kind] ?? (out.phones ? "headphone output" : "line output");
  return stages[name];
}

/** What headphones make of a milliwatt, or of a volt where nothing else is known of them. Common practice, no source. */
interface WornFigures extends Usual {
  readonly unit: SensitivityUnit;
}
const overEars: WornFigures = { ...usual(92, 100, 108), unit: "dB/mW" };
const worn: Readonly<Partial<Record<PartKind, WornFigures>>> = {
  headphones: overEars,
  headset: overEars,
  "in-ears": { ...usual(103, 111, 119), unit: "dB/mW" },
  // Of full scale, whatever is inside.
  "wireless headset": { ...usual(98, 105, 112), unit: "dB/V" },
};

/** What is usual of what is worn; nothing for what nobody wears. */
export const wornOf = (kind: PartKind): WornFigures | undefined => worn[kind];

/** Impedances of what is worn, where nobody said. Common practice, no source. */
const ohms: Readonly<Partial<Record<PartKind, Usual>>> = {
  headphones: usual(24, 32, 150),
  headset: usual(24, 32, 64),
  "in-ears": usual(10, 16, 40),
};
export const ohmsOf = (kind: PartKind): Usual | undefined => ohms[kind];

/** What stands in series inside an output for headphones, where nobody said. Common practice, no source. */
export const outputOhms: Usual = usual(1, 10, 60);
