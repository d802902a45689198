import { levelCap, levelFloor, stepTime } from "#core/signals/caps.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, DecibelsFullScale, Seconds } from "#core/units/units.ts";

/** So far above the noise what comes back is loud enough. */
const enough: Decibels = 40;
/** What comes back may not come nearer to full scale. */
const tooMuch: DecibelsFullScale = -1;
/** The least noise that is reckoned with, as mean square: what 16 bits have (-98 dBFS). */
const leastNoise = 1.6e-10;
/** Between a step and when it is surely back: its ramp, and the longest way round. And then it is listened to. */
const settling: Seconds = stepTime + 0.45;
const listening: Seconds = 0.3;
/** The first moments of an input may have its own beginning in them. */
const opening: Seconds = 0.05;

type LevelStep =
  | "louder"
  | "softer"
  | "loud enough"
  | "as loud as it may be"
  | "clipped"
  | undefined;

/** The greatest sample and the sums of squares of some blocks. */
class Heard {
  #sums: number[] = [];
  #frames = 0;
  peak = 0;

  add(channels: readonly Float32Array[]): void {
    this.#sums = channels.map((samples, n) => {
      let sum = this.#sums[n] ?? 0;
      for (const sample of samples) {
        sum += sample * sample;
        this.peak = Math.max(this.peak, Math.abs(sample));
      }
      return sum;
    });
    this.#frames += channels[0]?.length ?? 0;
  }

  get powers(): readonly number[] {
    return this.#sums.map((sum) => sum / Math.max(1, this.#frames));
  }
}

/**
 * Which step the level is to take, told from what comes back: first without the signal, then with it. Never more than one step
 * in the time a step takes to be back.
 */
export class LevelSearch {
  readonly #noise = new Heard();
  #heard = new Heard();
  #since: Seconds | undefined;
  #clipped = false;

  /** What comes in before the signal is played: the noise. */
  before(channels: readonly Float32Array[], at: Seconds): void {
    if (at >= opening) this.#noise.add(channels);
  }

  /** What comes in while it is played at a level; the step to take, or how it ended, or nothing yet. */
  during(channels: readonly Float32Array[], at: Seconds, level: DecibelsFullScale): LevelStep {
    this.#since ??= at;
    if (at < this.#since + settling) return undefined;
    this.#heard.add(channels);
    if (at < this.#since + settling + listening) return undefined;
    const step = this.#judged(level);
    this.#heard = new Heard();
    this.#since = undefined;
    return step;
  }

  #judged(level: DecibelsFullScale): LevelStep {
    if (toDecibels(this.#heard.peak) > tooMuch) {
      this.#clipped = true;
      return level > levelFloor ? "softer" : "clipped";
    }
    if (this.#clipped || this.#ratio >= enough) return "loud enough";
    return level < levelCap ? "louder" : "as loud as it may be";
  }

  /** By how much the signal stands above the noise on the side where it does so most. */
  get #ratio(): Decibels {
    const noise = this.#noise.powers;
    const ratios = this.#heard.powers.map((power, n) => {
      const floor = Math.max(leastNoise, noise[n] ?? 0);
      return 10 * Math.log10(Math.max(power - floor, 1e-20) / floor);
    });
    return Math.max(...ratios);
  }
}
