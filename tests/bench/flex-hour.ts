import type { FlexReturn } from "#core/measurement/flex-names.ts";
import { renderedLevel } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import { type Random, seeded } from "#core/units/random.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import { frequencies, type Gains, gainsOf, leadFault } from "#tests/core/measurement/flex-leads.ts";
import { normals } from "#tests/core/measurement/flex-streams.ts";

/** What a long run is made of. */
export interface Hour {
  readonly rate: Hertz;
  readonly returns: FlexReturn;
  readonly snr: Decibels;
  readonly ppm: number;
  readonly seed: number;
  /** Nothing breaks. */
  readonly quiet?: true;
}

/** One planted break. */
export interface Planted {
  readonly name: string;
  readonly at: Seconds;
  readonly lasts: Seconds;
}

const faults = [
  "tip open",
  "ring open",
  "sleeve open",
  "tip and ring shorted",
  "ring and sleeve shorted",
];

/** A prime, so that the noise meets the tones otherwise each time. */
const noiseLength = 1_000_003;

/**
 * Makes a stream block by block, faster than sines would: four pointers turned sample by sample, and noise from a table. Every ten seconds or so the lead breaks,
 * from 2 ms to half a second.
 */
export class FlexHour {
  readonly planted: Planted[] = [];
  readonly #hour: Hour;
  readonly #healthy: Gains;
  readonly #broken: ReadonlyMap<string, Gains>;
  readonly #random: Random;
  readonly #noise: Float32Array;
  readonly #pointers = frequencies.map(() => ({ cos: 1, sin: 0 }));
  readonly #turns: readonly { readonly cos: number; readonly sin: number }[];
  readonly #block: readonly [Float32Array, Float32Array];
  #sample = 0;
  #next: Planted;

  constructor(hour: Hour, block: number) {
    this.#hour = hour;
    this.#healthy = gainsOf(hour.returns);
    const shown = faults.filter((name) => hour.returns === "load box" || name !== "sleeve open");
    this.#broken = new Map(shown.map((name) => [name, gainsOf(hour.returns, leadFault(name))]));
    this.#random = seeded(hour.seed);
    const normal = normals(seeded(hour.seed + 1));
    const size = (this.#healthy[0]?.[0]?.re ?? 0) * peak * fromDecibels(-hour.snr);
    this.#noise = Float32Array.from({ length: noiseLength }, () => size * normal());
    this.#turns = frequencies.map((frequency) => {
      const angle = (2 * Math.PI * frequency * (1 + hour.ppm * 1e-6)) / hour.rate;
      return { cos: Math.cos(angle), sin: Math.sin(angle) };
    });
    this.#block = [new Float32Array(block), new Float32Array(block)];
    this.#next = this.#plant(3);
  }

  #plant(after: Seconds): Planted {
    const names = [...this.#broken.keys()];
    return {
      name: names[Math.floor(this.#random() * names.length)] ?? "",
      at: this.#hour.quiet ? Number.POSITIVE_INFINITY : after + 1 + 18 * this.#random(),
      lasts: 0.002 * 250 ** this.#random(),
    };
  }

  /** The next block; its arrays are written anew for the one after. */
  block(): readonly [Float32Array, Float32Array] {
    const { length } = this.#block[0];
    for (let at = 0; at < length; ) {
      const [gains, until] = this.#now();
      const end = Math.min(length, at + until);
      this.#fill(at, end, gains);
      at = end;
    }
    for (const pointer of this.#pointers) {
      const size = Math.hypot(pointer.cos, pointer.sin);
      pointer.cos /= size;
      pointer.sin /= size;
    }
    return this.#block;
  }

  /** What the lead does now, and for how many samples. */
  #now(): readonly [Gains, number] {
    const { at, lasts, name } = this.#next;
    const [from, to] = [at, at + lasts].map((time) => Math.ceil(time * this.#hour.rate)) as [
      number,
      number,
    ];
    if (this.#sample < from) return [this.#healthy, from - this.#sample];
    if (this.#sample < to) return [this.#broken.get(name) ?? this.#healthy, to - this.#sample];
    this.planted.push(this.#next);
    this.#next = this.#plant(at + lasts);
    return this.#now();
  }

  #fill(from: number, to: number, gains: Gains): void {
    const [left, right] = this.#block;
    const noise = this.#noise;
    for (let at = from; at < to; at += 1, this.#sample += 1) {
      left[at] = noise[this.#sample % noiseLength] as number;
      right[at] = noise[(7 * this.#sample + 500_000) % noiseLength] as number;
    }
    for (let tone = 0; tone < 4; tone += 1) this.#addTone(from, to, tone, gains);
  }

  #addTone(from: number, to: number, tone: number, gains: Gains): void {
    const [left, right] = this.#block;
    const pointer = this.#pointers[tone] ?? { cos: 1, sin: 0 };
    const turn = this.#turns[tone] ?? { cos: 1, sin: 0 };
    const [one = none, other = none] = gains.map((row) => row[tone] ?? none);
    let { cos, sin } = pointer;
    for (let at = from; at < to; at += 1) {
      left[at] = (left[at] as number) + peak * (one.re * sin + one.im * cos);
      right[at] = (right[at] as number) + peak * (other.re * sin + other.im * cos);
      const turned = cos * turn.cos - sin * turn.sin;
      sin = sin * turn.cos + cos * turn.sin;
      cos = turned;
    }
    Object.assign(pointer, { cos, sin });
  }
}

const none = { re: 0, im: 0 };
const peak = fromDecibels(renderedLevel);
