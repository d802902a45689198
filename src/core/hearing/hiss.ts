import { type Admitted, admit, type Refused } from "#core/signals/admit.ts";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { raised } from "#core/signals/raised.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels, Hertz, Seconds } from "#core/units/units.ts";
import type { Audition } from "./audition.ts";
import type { Work } from "./work.ts";

/** Further below a programme hiss cannot be played: outputs of 16 bits end there, and so do most amplifiers. Common practice, no source. */
export const deepest: Decibels = 90;

/** How long each part of it is. */
export const hissParts = { programme: 3, between: 0.5, hiss: 4 } as const satisfies Readonly<
  Record<string, Seconds>
>;

const ramp: Seconds = 0.05;

/** So much of a noise that repeats, at its own level times `gain`, with ramps; its right side begins a third of a period on, so that the two are alike in nothing but loudness. */
function stretch(name: SignalName, rate: Hertz, lasts: Seconds, gain: number): Sound {
  const { left: made } = render(name, rate, 0);
  const { from, to } = signals[name].loop?.(rate) ?? { from: 0, to: made.length };
  const period = to - from;
  const length = Math.round(lasts * rate);
  const side = (shift: number) =>
    Float32Array.from({ length }, (_, n) => {
      const sample = made[from + ((n + shift) % period)] ?? 0;
      const open = Math.min(raised(n / rate, ramp), raised((length - 1 - n) / rate, ramp));
      return sample * gain * open;
    });
  return { left: side(0), right: side(Math.round(period / 3)), rate };
}

/**
 * Noise that stands in for a programme, at the level all is rendered at, then hiss alone, so many decibels lower: white from 20 Hz to 20 kHz, as amplifiers
 * make it. Nothing where that is further below than can be played.
 */
export function* programmeThenHiss(below: Decibels, rate: Hertz): Work<Sound | undefined> {
  if (!(below <= deepest)) return undefined;
  const { programme, between, hiss } = hissParts;
  const first = stretch("pink-noise", rate, programme, 1);
  yield 0.5;
  // Hiss that is louder than the programme stays within what may be played: then the programme is the softer one.
  const over = Math.max(0, -below);
  const second = stretch("white-noise", rate, hiss, fromDecibels(-below - over));
  yield 0.9;
  const pause = Math.round(between * rate);
  const length = first.left.length + pause + second.left.length;
  const joined = { left: new Float32Array(length), right: new Float32Array(length), rate };
  for (const side of ["left", "right"] as const) {
    joined[side].set(first[side].map((sample) => sample * fromDecibels(-over)));
    joined[side].set(second[side], first.left.length + pause);
  }
  yield 1;
  return joined;
}

/** The same ready to be played, once gate one let it through. */
export function* hissAudition(below: Decibels, rate: Hertz): Work<Audition | Refused | undefined> {
  const sound = yield* programmeThenHiss(below, rate);
  if (sound === undefined) return undefined;
  const admitted = admit(sound);
  if ("refused" in admitted) return admitted;
  const arrival = asItIs(admitted);
  return { healthy: arrival, faulty: arrival };
}

const asItIs = (sound: Admitted) => ({ sound, turned: [1, 1] }) as const;

/** Where the programme is played at so much of full scale, hiss so far below it is under what 16 bits carry. */
export const underSixteenBits = (played: Decibels, below: Decibels): boolean =>
  played - below < sixteenBits;

/** The noise of a sine at full scale in 16 bits: 6.02 dB a bit and 1.76. */
const sixteenBits: Decibels = -(16 * 6.02 + 1.76);
