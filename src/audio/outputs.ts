import { askForNames, namedDevices } from "./devices.ts";
import type { Device } from "./route.ts";

/** Why outputs cannot be chosen from; each has its words in the ui. */
export type NoChoice =
  /** The browser plays to what the system plays to. */
  | "cannot choose"
  /** The names were not allowed to be seen. */
  | "not allowed"
  /** There is none with a name. */
  | "none";

/** The outputs there are, by their names. */
export interface Outputs {
  /** Whether this browser can play to another output than the system's own. */
  readonly canChoose: () => boolean;
  /** Those whose names may already be seen, without asking. */
  readonly known: () => Promise<readonly Device[]>;
  /**
   * Asks for the names, which a browser shows only to a page that may use the microphone; the input is closed at once. To be
   * called in a press: the browser will ask.
   */
  readonly named: () => Promise<readonly Device[] | NoChoice>;
}

/** The browser's own outputs. */
export const createOutputs = (): Outputs => ({ canChoose, known, named });

const canChoose = (): boolean =>
  typeof AudioContext !== "undefined" &&
  "setSinkId" in AudioContext.prototype &&
  navigator.mediaDevices !== undefined;

const known = async (): Promise<readonly Device[]> =>
  canChoose() ? namedDevices("audiooutput") : [];

async function named(): Promise<readonly Device[] | NoChoice> {
  if (!canChoose()) return "cannot choose";
  const refused = await askForNames();
  const devices = await known();
  if (devices.length > 0) return devices;
  return refused === undefined ? "none" : "not allowed";
}
