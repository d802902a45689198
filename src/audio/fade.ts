import type { IAudioContext } from "standardized-audio-context";
import type { Seconds } from "#core/units/units.ts";
import type { Graph } from "./graph.ts";

/** As long as a fade takes from when the browser begins with it. */
const fadeTime: Seconds = 0.01;
/** When it is to be silent at the latest, and how long before that whatever is left of a late fade goes. */
const [latest, rest]: readonly [Seconds, Seconds] = [0.0199, 0.0012];
/** The same where the browser hides that it renders 10 to 20 ms at once, and tells the time as late (Firefox: `baseLatency` is zero). */
const latestUnsaid: Seconds = 0.05;

/**
 * To zero within 20 ms, for good. The fade is a sound of its own, added to the gain: it begins where the browser gets to it and
 * is never cut short, as a scheduled one would be whose beginning has passed when the browser learns of it. Where it begins so
 * late that it would not be done in time, what is left goes in a millisecond.
 */
export function fadeOut(context: IAudioContext, graph: Graph<IAudioContext>): void {
  const until = context.currentTime + (context.baseLatency > 0 ? latest : latestUnsaid);
  const ramp = context.createBufferSource();
  ramp.buffer = rampOf(context);
  ramp.connect(graph.fade);
  ramp.start();
  graph.end.setValueAtTime(1, until - rest);
  graph.end.linearRampToValueAtTime(0, until);
  graph.source.stop(until);
}

/** From nothing to minus one along a raised cosine, and then minus one until all is over. */
function rampOf(context: IAudioContext) {
  const { sampleRate } = context;
  const steps = Math.round(fadeTime * sampleRate);
  const buffer = context.createBuffer(1, Math.ceil(2 * latestUnsaid * sampleRate), sampleRate);
  const samples = Float32Array.from({ length: buffer.length }, (_, n) =>
    n < steps ? -(Math.sin((Math.PI * (n + 1)) / (2 * steps)) ** 2) : -1,
  );
  buffer.copyToChannel(samples, 0);
  return buffer;
}
