import type { EarMatrix } from "#audio/ear-matrix.ts";
import type { Bench } from "#core/bench/bench.ts";
import type { Derived } from "#core/session/derive.ts";

/** What the bench's rig makes of a sound at a position, this time; undefined with real gear. */
export function benchEars(
  bench: Bench | undefined,
  { evidence }: Derived,
  position: string,
  time: number,
): EarMatrix | undefined {
  const gains = bench?.gains(position, evidence.era.course.moves, time);
  return gains && { ll: gains[0], lr: gains[1], rl: gains[2], rr: gains[3] };
}
