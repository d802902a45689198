import { type Admitted, admit, type Refused } from "#core/signals/admit.ts";
import type { Sound } from "#core/signals/sound.ts";
import { size } from "#core/units/complex.ts";
import type { Hertz } from "#core/units/units.ts";
import { atEars } from "./at-ears.ts";
import { fullSize, type Lifted } from "./full-size.ts";
import { gainWithin, gate, greater, measured, rendered } from "./measure.ts";
import type { EarsAt } from "./response.ts";
import { part, type Work } from "./work.ts";

/** The two that are compared by ear. */
export const versions = ["healthy", "faulty"] as const;
export type Version = (typeof versions)[number];

/**
 * What arrives at the ears, ready to be played. Each ear's samples are as large as gate one lets through, whatever their
 * level (`fullSize` says why); what they are turned down by is applied behind the gate.
 */
export interface Arrival {
  readonly sound: Admitted;
  /** Gains of the left and of the right ear, 0 to 1, at which they are as loud as they are. */
  readonly turned: readonly [left: number, right: number];
}

/**
 * The same programme behind a healthy and a faulty chain: of one length and rate, in step to the sample, silent at both
 * ends, and as loud against each other as the chains make them. Nothing in it is louder than a test signal.
 */
export type Audition = Readonly<Record<Version, Arrival>>;

/** Middle of the idents. */
const middle: Hertz = 1000;
/** An ear that stays below this as played is silent, and a chain lets nothing through (-100 dB). */
const inaudible = 1e-5;

/**
 * A programme behind two chains, to be compared by ear: `atEars` of each, then `comparable`. The programme is a rendered
 * signal or an own sound. For one chain alone (to name a fault by ear) give the same one twice. Its first four fifths are in
 * pieces of a few milliseconds; then come the gate and the ramps, of a minute some tenths of a second in one piece: silence
 * what plays before, since a press of silence would wait.
 * @throws RangeError where a chain gives no two by two matrix of finite gains
 */
export function* auditionOf(
  programme: Sound,
  chains: Readonly<Record<Version, EarsAt>>,
): Work<Audition | Refused> {
  const healthy = yield* part(atEars(programme, chains.healthy), 0, 0.4);
  const alike = chains.faulty === chains.healthy;
  const faulty = alike ? healthy : yield* part(atEars(programme, chains.faulty), 0.4, 0.8);
  const gain = Math.max(...chains.healthy(middle).flat().map(size));
  return yield* part(comparable(programme, { healthy, faulty }, gain), 0.8, 1);
}

/**
 * What a healthy and a faulty chain made of a programme, both brought by one gain to where they may be played: the healthy
 * one as loud as the programme, unless that would make either louder than the programme or a peak too great. So louder and
 * weaker stay true, and no fault is made louder than its chain makes it beside the healthy one. Refused where gate one
 * finds nothing but clicks in it, or samples that are not finite.
 * @param gain the healthy chain's largest gain
 * @throws RangeError when they are not of one length and rate
 */
export function* comparable(
  programme: Sound,
  made: Readonly<Record<Version, Sound>>,
  gain: number,
): Work<Audition | Refused> {
  const { healthy, faulty } = made;
  const { rate } = programme;
  for (const it of [healthy, faulty]) {
    const fits = [it.left, it.right].every(({ length }) => length === programme.left.length);
    if (fits && it.rate === rate) continue;
    throw new RangeError(
      `${it.left.length} and ${it.right.length} samples at ${it.rate} Hz were not made from ${programme.left.length} at ${rate} Hz`,
    );
  }
  const unity = gain > inaudible ? 1 / gain : 1;
  const first = yield* part(lifted(healthy, inaudible / unity), 0, 0.4);
  const second =
    healthy === faulty ? first : yield* part(lifted(faulty, inaudible / unity), 0.4, 0.7);
  const level = greater(measured(programme.left, rate), measured(programme.right, rate)).level;
  const most = greater(
    greater(first.left.own, first.right.own),
    greater(second.left.own, second.right.own),
  );
  const factor = Math.min(
    unity,
    gainWithin(most, { ...rendered, level: Math.min(level, gate.level) }),
  );
  yield 0.8;
  const one = arrival(first, rate, factor);
  yield 0.9;
  const other = first === second ? one : arrival(second, rate, factor);
  yield 1;
  if ("refused" in one) return one;
  return "refused" in other ? other : { healthy: one, faulty: other };
}

interface Ears {
  readonly left: Lifted;
  readonly right: Lifted;
}

/** Both ears at full size; what is nothing but clicks stays as it is, for gate one to refuse. */
function* lifted({ left, right, rate }: Sound, silent: number): Work<Ears> {
  const whole = (samples: Float32Array): Lifted =>
    fullSize(samples, rate, silent) ?? { samples, lift: 1, own: measured(samples, rate) };
  const first = whole(left);
  yield 0.5;
  const second = whole(right);
  yield 1;
  return { left: first, right: second };
}

/** Ears at full size, made ready to be played at so many times their own. */
function arrival({ left, right }: Ears, rate: Hertz, factor: number): Arrival | Refused {
  const sound = admit({ left: left.samples, right: right.samples, rate });
  const turned = ({ lift }: Lifted) => (lift === 0 ? 0 : Math.min(1, factor / lift));
  return "refused" in sound ? sound : { sound, turned: [turned(left), turned(right)] };
}
