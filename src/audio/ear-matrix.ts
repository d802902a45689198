/**
 * What each ear gets of each side, as gains: left ear = ll·left + lr·right, right ear = rl·left + rr·right.
 * Negative is upside down; identity is a good stereo feed.
 */
export interface EarMatrix {
  readonly ll: number;
  readonly lr: number;
  readonly rl: number;
  readonly rr: number;
}

/**
 * The matrix with which nothing gets louder than the programme itself: as it is, or made smaller as a whole when an ear
 * would get more than one side's worth, so that the ears keep their proportions. Undefined when an entry is not finite.
 */
export function tamed({ ll, lr, rl, rr }: EarMatrix): EarMatrix | undefined {
  const most = Math.max(1, Math.abs(ll) + Math.abs(lr), Math.abs(rl) + Math.abs(rr));
  if (!Number.isFinite(most)) return undefined;
  return { ll: ll / most, lr: lr / most, rl: rl / most, rr: rr / most };
}
