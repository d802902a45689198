import type { Settings } from "#core/parts/kind.ts";
import { bounds, type FigureName, figureNames, type Usual } from "./figures.ts";

/** A number as it is reckoned with: told by somebody, or usual. */
export interface Told extends Usual {
  readonly told: boolean;
}

/** The name of the setting that says it: of a box with one amplifier for all outputs its own, else after the output's name. */
export const settingFor = (name: FigureName, socket?: string): string =>
  socket === undefined ? name : `${socket}: ${name}`;

/** The setting that says how far up an output's knob stands, from nought to one. */
export const knobSetting = (socket: string): string => `${socket}: knob`;

/** Whether any knob of a part was set, or any number of it typed. */
export const saysOfLevels = (settings: Settings = {}): boolean =>
  Object.keys(settings).some((name) => levelSettings.has(name.split(": ").at(-1) ?? ""));

const levelSettings = new Set<string>([...figureNames, "knob"]);

/** Whether it can be: finite, and within what is understood. */
export const isFigure = (name: FigureName, value: number): boolean =>
  value >= bounds[name].least && value <= bounds[name].most;

const known = (value: number): Told => ({ typical: value, low: value, high: value, told: true });

/** What a part's settings say of a number; what they do not, or what cannot be, is usual. */
export function toldIn(
  settings: Settings = {},
  name: FigureName,
  usual: Usual,
  socket?: string,
): Told {
  const value = settings[settingFor(name, socket)];
  return typeof value === "number" && isFigure(name, value)
    ? known(value)
    : { ...usual, told: false };
}

/** A setting of a part's own kind, such as its ohms. */
export function ohmsIn(settings: Settings = {}, name: string, usual: Usual): Told {
  const value = settings[name];
  return typeof value === "number" ? known(value) : { ...usual, told: false };
}
