import type { Granted } from "#audio/granted.ts";
import type { Measured } from "#audio/measurer.ts";
import type { Capture } from "#core/measurement/capture.ts";
import { instruments } from "#core/signals/instruments.ts";
import { renderSignal } from "#core/signals/render.ts";
import { seeded } from "#core/units/random.ts";

/** Left input from left, from right, right input from left, from right. */
export type Wire = readonly [ll: number, lr: number, rl: number, rr: number];

const rate = 48_000;

/** A plain line input. */
export const lineIn: Granted = {
  device: { id: "line", name: "Rack interface" },
  processed: [],
  unsaid: [],
  channels: 2,
  rate,
  inputRate: rate,
  latency: undefined,
  baseLatency: undefined,
};

let kept: ReturnType<typeof renderSignal> | undefined;

/** The signal takes a while to be made. */
function rendered() {
  kept ??= renderSignal(instruments.multitone, rate, 1);
  return kept;
}

interface How {
  /** Of the output against the signal as it is rendered, decibels. */
  readonly loud?: number;
  /** Greatest sample of the noise. */
  readonly noise?: number;
}

/** The multitone through a wire, 83 ms late and with a little noise, as it is recorded. */
export function captured([ll, lr, rl, rr]: Wire, { loud = -24, noise = 1e-5 }: How = {}): Capture {
  const { left, right } = rendered();
  const random = seeded(7);
  const late = 4000;
  const size = 10 ** (loud / 20);
  const through = (a: number, b: number) =>
    Float32Array.from({ length: left.length + rate }, (_, at) => {
      const [x, y] = [left[at - late] ?? 0, right[at - late] ?? 0];
      return size * (a * x + b * y) + noise * (2 * random() - 1);
    });
  return { channels: [through(ll, lr), through(rl, rr)], rate };
}

/** A measurement that has come to its end. */
export const measuredThrough = (wire: Wire, granted: Granted = lineIn): Measured => ({
  ended: "measured",
  capture: captured(wire),
  granted,
  gaps: { missing: 0, blank: 0, behind: 0 },
  level: -50,
});
