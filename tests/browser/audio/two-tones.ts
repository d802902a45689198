import type { Arrival, Audition } from "#core/hearing/audition.ts";
import { admit } from "#core/signals/admit.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";

/** A tone under ramps of 20 ms that passes gate one, as large as it is. */
function tone(frequency: Hertz, amplitude: number, length: Seconds, rate: Hertz): Arrival {
  const count = Math.round(length * rate);
  const samples = Float32Array.from({ length: count }, (_, n) => {
    const edge = Math.min(1, n / rate / 0.02, (count - 1 - n) / rate / 0.02);
    const ramp = Math.sin((Math.PI / 2) * edge) ** 2;
    return amplitude * ramp * Math.sin((2 * Math.PI * frequency * n) / rate);
  });
  const sound = admit({ left: samples, right: samples.map((x) => -x), rate });
  if ("refused" in sound) throw new Error(`${sound.refused}: ${sound.measured}`);
  return { sound, turned: [1, 1] };
}

/** Two slow tones that are as unlike as can be: one is the other upside down and half as large. */
export const twoTones = (length: Seconds, rate: Hertz): Audition => ({
  healthy: tone(100, 0.1, length, rate),
  faulty: tone(100, -0.05, length, rate),
});

/** The most that a tone of 100 Hz and amplitude 1 moves from one sample to the next. */
export const steepest = (rate: Hertz): number => (2 * Math.PI * 100) / rate;

/** Gain of the start level: -50 dBFS for what is rendered at -26. */
export const quiet = 10 ** (-24 / 20);
