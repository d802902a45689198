import type { FlexReturn } from "#core/measurement/flex-names.ts";
import { type FlexState, FlexWatch } from "#core/measurement/flex-watch.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { type Stream, streamed } from "./flex-streams.ts";

/** Hands samples over in blocks, as long as told or of any length up to 2000. */
export function fed(
  watch: FlexWatch,
  samples: readonly Float32Array[],
  blocks: number | Random = 512,
): FlexWatch {
  const length = samples[0]?.length ?? 0;
  for (let at = 0; at < length; ) {
    const size = typeof blocks === "number" ? blocks : Math.floor(2000 * blocks());
    watch.push(samples.map((channel) => channel.subarray(at, at + size)));
    at += size;
  }
  return watch;
}

/** A watch that saw a stream, in blocks of all lengths. */
export function watched(stream: Stream, returns: FlexReturn): FlexWatch {
  const samples = streamed(stream);
  const watch = new FlexWatch({ rate: stream.rate, channels: 2, returns });
  return fed(watch, samples, seeded(stream.seed ?? 1));
}

export const seen = (stream: Stream, returns: FlexReturn): FlexState =>
  watched(stream, returns).state;
