import { AudioContext, type IAudioContext } from "standardized-audio-context";

/*
 * The one file that brings in the Web Audio library, so that it can be fetched after the first screen stands.
 */

/** A context on the system's own output. Throws when there is none to be had. */
export const newContext = (): IAudioContext => new AudioContext({ latencyHint: "interactive" });
