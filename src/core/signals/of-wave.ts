import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { renderedLevel } from "./caps.ts";
import { raised } from "./raised.ts";
import type { Signal } from "./signal.ts";

/** When one wave sounds on both channels alike, and how it begins and ends. */
interface Span {
  readonly start: Seconds;
  readonly end: Seconds;
  /** Raised-cosine ramps inside it. */
  readonly attack: Seconds;
  readonly release: Seconds;
  readonly peak: DecibelsFullScale;
}

/** One wave on both channels, at `renderedLevel`; `wave` gives its reader for a rate: the sample at a time since the start. */
export const ofWave = (
  { start, end, attack, release, peak }: Span,
  wave: (rate: Hertz) => (past: Seconds, n: number) => number,
): Signal => ({
  duration: end + 0.1,
  level: renderedLevel,
  peak,
  stretches: () => [{ start, end, left: 1, right: 1 }],
  fill: ({ left, right }, rate) => {
    const read = wave(rate);
    const last = Math.min(left.length, Math.floor(end * rate));
    for (let n = Math.ceil(start * rate); n < last; n += 1) {
      const time = n / rate;
      left[n] = raised(time - start, attack) * raised(end - time, release) * read(time - start, n);
    }
    right.set(left);
  },
});
