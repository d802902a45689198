import { AudioContext, type IAudioContext } from "standardized-audio-context";

/*
 * The one file that brings in the Web Audio library, so that it can be fetched after the first screen stands.
 */

/** A context on a device by its name in this page, or on the system's own output. Throws when there is none to be had. */
export const newContext = (device?: string): IAudioContext =>
  // The library's types know no device; what it is given it hands to the browser's own constructor as it is.
  new AudioContext({ latencyHint: "interactive", ...(device && { sinkId: device }) });
