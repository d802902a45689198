import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import type { FlexEvent } from "#core/measurement/flex-names.ts";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import type { Seconds } from "#core/units/units.ts";
import { FlexHour, type Hour, type Planted } from "./flex-hour.ts";

/** How a long run went. */
export interface Soaked {
  readonly planted: number;
  /** Of those planted, told within a millisecond in time and length, and as the conductor it was. */
  readonly found: number;
  /** Told, and not planted. */
  readonly untrue: number;
  /** Seconds watched in a second of the watch's own work. */
  readonly speed: number;
  /** Bytes held more at the end than halfway, with all garbage gone; what was planted and told is held by the test itself. */
  readonly grown: number;
}

const named: Readonly<Record<string, FlexEvent["fault"]>> = {
  "tip open": "tip",
  "ring open": "ring",
  "sleeve open": "sleeve",
  "tip and ring shorted": "tip to ring",
  "ring and sleeve shorted": "ring",
};

const within = (one: number, other: number) => Math.abs(one - other) < 0.001;
const tells = (event: FlexEvent, { name, at, lasts }: Planted): boolean =>
  within(event.at, at) && within(event.duration, lasts) && event.fault === named[name];

/** Bytes that are held, buffers with them. */
function held(): number {
  setFlagsFromString("--expose-gc");
  const collect: unknown = runInNewContext("gc");
  if (typeof collect === "function") for (let times = 0; times < 3; times += 1) collect();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return heapUsed + arrayBuffers;
}

const block = 1024;

/** A watch, what it is fed, and what it told so far. */
class Soak {
  readonly #hour: Hour;
  readonly #stream: FlexHour;
  readonly #watch: FlexWatch;
  readonly #told = new Map<number, FlexEvent>();
  #blocks = 0;
  #worked = 0;

  constructor(hour: Hour) {
    this.#hour = hour;
    this.#stream = new FlexHour(hour, block);
    this.#watch = new FlexWatch({ rate: hour.rate, channels: 2, returns: hour.returns });
  }

  /** Goes on for some seconds, the hand passing a plug at their end. */
  run(seconds: Seconds): void {
    for (const until = this.#blocks + (seconds * this.#hour.rate) / block; this.#blocks < until; ) {
      const samples = this.#stream.block();
      const start = performance.now();
      this.#watch.push(samples);
      this.#worked += performance.now() - start;
      this.#blocks += 1;
    }
    this.#watch.mark(this.#blocks % 2 === 0 ? 1 : 2);
    for (const event of this.#watch.state.events) if (!event.going) this.#told.set(event.id, event);
  }

  result(): Omit<Soaked, "grown"> {
    const events = [...this.#told.values()];
    // What ended less than a tenth of a second ago is not told yet.
    const until = this.#watch.state.now - 0.1;
    const planted = this.#stream.planted.filter(({ at, lasts }) => at + lasts < until);
    return {
      planted: planted.length,
      found: planted.filter((one) => events.some((event) => tells(event, one))).length,
      untrue: events.filter((event) => !planted.some((one) => tells(event, one))).length,
      speed: (1000 * this.#blocks * block) / this.#hour.rate / this.#worked,
    };
  }
}

/** Watches for some minutes of synthetic time; `tell` gets a line for each tenth of it. */
export function soakFlex(
  minutes: number,
  hour: Hour,
  tell: (line: string) => void = () => {},
): Soaked {
  const soak = new Soak(hour);
  let halfway = 0;
  for (let tenth = 1; tenth <= 10; tenth += 1) {
    soak.run(6 * minutes);
    const bytes = held();
    const { found, planted, untrue } = soak.result();
    if (tenth === 5) halfway = bytes;
    tell(
      `${((tenth * minutes) / 10).toFixed(1)} min: ${found} of ${planted} found, ${untrue} made up; ${bytes} bytes held`,
    );
  }
  return { ...soak.result(), grown: held() - halfway };
}

/**
 * `npm run soak -- flex [minutes]`: an hour unless told otherwise, once with breaks and once without any in more noise. Ends with 1 when something was missed or made
 * up.
 */
export function soakFlexHours(given = "60"): void {
  const minutes = Number(given);
  if (!(minutes > 0)) throw new RangeError(`${given} minutes: more than none`);
  const hours: readonly Hour[] = [
    { rate: 48_000, returns: "load box", snr: 30, ppm: 200, seed: 1 },
    { rate: 48_000, returns: "load box", snr: 20, ppm: -200, seed: 2, quiet: true },
  ];
  for (const hour of hours) {
    const { planted, found, untrue, speed, grown } = soakFlex(minutes, hour, console.log);
    console.log(
      `${minutes} min at ${hour.rate} Hz, noise ${hour.snr} dB below, ${hour.ppm} ppm: ${found} of ${planted} breaks found, ${untrue} made up; ${speed.toFixed(0)} times faster than real time; ${grown} bytes more held than halfway`,
    );
    if (found < planted || untrue > 0) process.exitCode = 1;
  }
}
