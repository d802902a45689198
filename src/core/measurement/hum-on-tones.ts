import { apart, sentCombs } from "./combs.ts";
import type { Floor } from "./floor.ts";
import type { Hum } from "./return.ts";

/** Lines of the mains are thought of up to so many times its frequency, those that were not measured as loud as the loudest of the last ones that were. */
const lines = 40;
const last = 3;
/** What is folded is about four seconds. */
const seconds = 3.9;

/** The power of each line as a sine's peak. */
function powersOf({ levels }: Hum): readonly number[] {
  const known = levels.map((level) => (level === undefined ? undefined : 2 * 10 ** (level / 10)));
  const beyond = Math.max(0, ...known.slice(-last).map((power) => power ?? 0));
  return Array.from({ length: lines }, (_, at) => {
    if (at >= known.length) return beyond;
    // A line that could not be told, since a tone lies on it, is as loud as the louder of its neighbours at most.
    return known[at] ?? Math.max(0, known[at - 1] ?? 0, known[at + 1] ?? 0);
  });
}

/** Noise with what hum adds to it at the tones it lies on, or leaks into. */
export function withHum(floor: Floor, hum: Hum | undefined): Floor {
  if (hum === undefined) return floor;
  const powers = powersOf(hum);
  const leaked = (frequency: number): number =>
    powers.reduce((sum, power, at) => {
      const away = Math.abs(frequency - (at + 1) * hum.frequency);
      return sum + power * Math.min(1, 1 / (Math.PI * away * seconds) ** 2);
    }, 0);
  const power = floor.power.map((own, comb) =>
    own.map((noise, k) => noise + leaked((sentCombs[comb]?.begin ?? 0) + apart * k)),
  );
  return { ...floor, power };
}
