import { fromDecibels, toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Hertz, Ohms, Volts } from "#core/units/units.ts";

/** 1 mW in 600 Ω: what 0 dBu is. */
const zeroDbu: Volts = Math.sqrt(0.6);

/** Volts as dBu: 0 dBu is 0.7746 V. Nothing is minus infinity. */
export const toDbu = (volts: Volts): Decibels => toDecibels(volts / zeroDbu);
export const fromDbu = (level: Decibels): Volts => zeroDbu * fromDecibels(level);

/** Volts as dBV: 0 dBV is 1 V. */
export const toDbv = (volts: Volts): Decibels => toDecibels(volts);
export const fromDbv = (level: Decibels): Volts => fromDecibels(level);

/** Boltzmann's constant, joules a kelvin; exact since 2019 (SI brochure, ninth edition). */
const boltzmann = 1.380649e-23;
/** What noise is reckoned at: 290 K, as radio has it; 20 °C is 0.05 dB more. */
const roomKelvin = 290;

/** The band that noise of gear is told in, 20 Hz to 20 kHz. */
export const audioBand: Hertz = 20_000 - 20;

/** Thermal noise of a resistance over a band, volts RMS (J. B. Johnson and H. Nyquist, 1928). */
export const thermalNoise = (ohms: Ohms, band: Hertz = audioBand, kelvin = roomKelvin): Volts =>
  Math.sqrt(4 * boltzmann * kelvin * ohms * band);

/** Volts RMS at which so many milliwatts are given to a resistance. */
export const voltsFor = (milliwatts: number, ohms: Ohms): Volts =>
  Math.sqrt((milliwatts / 1000) * ohms);

/** Milliwatts that volts RMS give to a resistance. */
export const milliwattsOf = (volts: Volts, ohms: Ohms): number => (1000 * volts * volts) / ohms;
