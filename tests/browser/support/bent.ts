import type { FakeMeasurer } from "#audio/fake-measurer.ts";
import { gainsOf, leadFault } from "#tests/core/measurement/flex-leads.ts";
import { type Stream, streamed } from "#tests/core/measurement/flex-streams.ts";
import { lineIn } from "./returned.ts";

/** A fault of a lead that is bent, for some time. */
export const bent = (name: string, at: number, lasts: number) => ({
  at,
  lasts,
  gains: gainsOf("joined", leadFault(name)),
});

/** What comes back of a lead while it is bent, at 40 dB over the noise. */
export const stream = (seconds: number, faults: Stream["faults"] = []): readonly Float32Array[] =>
  streamed({ rate: lineIn.rate, seconds, healthy: gainsOf("joined"), faults, snr: 40, level: -20 });

/** Hands some of it over, in blocks of 10 ms, as if it came from a time on. */
export function hear(
  measurer: FakeMeasurer,
  samples: readonly Float32Array[],
  { from = 0, to = Number.POSITIVE_INFINITY, offset = 1 } = {},
): void {
  const { rate } = lineIn;
  const block = Math.round(rate / 100);
  const end = Math.min(samples[0]?.length ?? 0, Math.round(to * rate));
  for (let at = Math.round(from * rate); at < end; at += block)
    measurer.hear(
      samples.map((channel) => channel.subarray(at, at + block)),
      offset + at / rate,
    );
}
