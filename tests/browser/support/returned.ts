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
  const through = (a: number, b: number) => {
    const samples = new Float32Array(left.length + rate);
    for (let at = 0; at < samples.length; at += 1) {
      const [x, y] = [left[at - late] ?? 0, right[at - late] ?? 0];
      samples[at] = size * (a * x + b * y) + noise * (2 * random() - 1);
    }
    return samples;
  };
  return { channels: [through(ll, lr), through(rl, rr)], rate };
}

/** What a cup gives of the left and of the right, and how much it bends what it gives: the square that is added. */
type Cup = readonly [left: number, right: number, bent?: number];

/** A cup held to a microphone that comes on the first of two channels, as it is measured. */
export function measuredAt([left, right, bent = 0]: Cup, granted: Granted = lineIn): Measured {
  const { channels, rate } = captured([left, right, 0, 0]);
  const [heard = new Float32Array(), none = new Float32Array()] = channels;
  const capture = { channels: [heard.map((x) => x + bent * x * x), none], rate };
  return { ...measuredThrough([0, 0, 0, 0], granted), capture } as Measured;
}

/** A measurement that has come to its end. */
export const measuredThrough = (wire: Wire, granted: Granted = lineIn): Measured => ({
  ended: "measured",
  capture: captured(wire),
  granted,
  gaps: { missing: 0, blank: 0, behind: 0 },
  level: -50,
});
