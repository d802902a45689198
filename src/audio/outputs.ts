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

/** Two names for what the system plays to, which may change under them. */
const followers = ["default", "communications"];

/** The browser's own outputs. */
export const createOutputs = (): Outputs => ({ canChoose, known, named });

const canChoose = (): boolean =>
  typeof AudioContext !== "undefined" &&
  "setSinkId" in AudioContext.prototype &&
  navigator.mediaDevices !== undefined;

async function known(): Promise<readonly Device[]> {
  if (!canChoose()) return [];
  const all = await navigator.mediaDevices.enumerateDevices().catch(() => []);
  return all
    .filter(({ kind, label }) => kind === "audiooutput" && label !== "")
    .filter(({ deviceId }) => deviceId !== "" && !followers.includes(deviceId))
    .map(({ deviceId, label }) => ({ id: deviceId, name: label }));
}

async function named(): Promise<readonly Device[] | NoChoice> {
  if (!canChoose()) return "cannot choose";
  const allowed = await opened();
  const devices = await known();
  if (devices.length > 0) return devices;
  return allowed ? "none" : "not allowed";
}

/** Whether the microphone could be opened; it is closed again before this is told. */
async function opened(): Promise<boolean> {
  try {
    const stream = await navigator.mediaDevices.getUserMedia({ audio: true });
    for (const track of stream.getTracks()) track.stop();
    return true;
  } catch {
    return false;
  }
}
