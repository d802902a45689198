import { type IOfflineAudioContext, OfflineAudioContext } from "standardized-audio-context";
import type { Hertz } from "#core/units/units.ts";

/*
 * Brings in the Web Audio library as `new-context.ts` does, so that it can be fetched when a file is chosen.
 */

/** A context that plays nowhere. Throws for a rate that the browser does not know. */
export const newOfflineContext = (rate: Hertz): IOfflineAudioContext =>
  new OfflineAudioContext({ length: 1, numberOfChannels: 1, sampleRate: rate });
