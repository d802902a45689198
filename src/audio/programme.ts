import type { Arrival, Audition, Version } from "#core/hearing/audition.ts";
import { admit } from "#core/signals/admit.ts";
import { renderedLevel } from "#core/signals/caps.ts";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import type { Sound } from "#core/signals/sound.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";
import { type EarMatrix, tamed } from "./ear-matrix.ts";
import type { Voice } from "./graph.ts";

export interface AuditionHow {
  /** From the beginning again, without a gap, until silenced; once unless true. */
  readonly loop?: boolean;
  /** Which is heard first; healthy unless given. */
  readonly first?: Version;
}

/** What a press puts into the graph. */
export interface Programme extends Voice {
  /** In step with it and heard instead of it when asked. */
  readonly instead?: Voice;
  /** From the beginning again without end, or how long it takes. */
  readonly lasts: "until silenced" | Seconds;
}

/** A signal as it is or as a feed with this ear matrix would sound; undefined when it may not be played. */
export function ofSignal(
  name: SignalName,
  seed: number,
  rate: Hertz,
  through?: EarMatrix,
): Programme | undefined {
  const sound = admit(evenly(render(name, rate, seed), signals[name].level));
  const ears = through && tamed(through);
  if ("refused" in sound || (through && !ears)) return undefined;
  return { sound, through: ears, lasts: signals[name].duration };
}

/** A sound brought to the level that all are rendered at, so that the same setting is as loud. */
function evenly(sound: Sound, level: DecibelsFullScale): Sound {
  if (level === renderedLevel || !Number.isFinite(level)) return sound;
  const by = fromDecibels(renderedLevel - level);
  const turned = (channel: Float32Array) => channel.map((sample) => sample * by);
  return { ...sound, left: turned(sound.left), right: turned(sound.right) };
}

/** The healthy version with the faulty one instead; undefined when they are not in step or a gain is not finite. */
export function ofAudition({ healthy, faulty }: Audition, loop: boolean): Programme | undefined {
  const [first, second] = [voiceOf(healthy), voiceOf(faulty)];
  const inStep =
    first?.sound.rate === second?.sound.rate &&
    first?.sound.left.length === second?.sound.left.length;
  if (first === undefined || second === undefined || !inStep) return undefined;
  const { left, rate } = first.sound;
  return { ...first, instead: second, lasts: loop ? "until silenced" : left.length / rate };
}

function voiceOf({ sound, turned: [left, right] }: Arrival): Voice | undefined {
  const through = tamed({ ll: left, lr: 0, rl: 0, rr: right });
  return through && { sound, through };
}
