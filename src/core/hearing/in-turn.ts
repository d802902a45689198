import type { Sound } from "#core/signals/sound.ts";
import type { Seconds } from "#core/units/units.ts";

/**
 * Sounds of one rate one after the other, with silence between and at the end, so that it can begin again.
 * @throws RangeError where the rates differ
 */
export function inTurn(sounds: readonly Sound[], gap: Seconds): Sound {
  const [first] = sounds;
  if (first === undefined) throw new RangeError("there is no sound to join");
  const { rate } = first;
  if (sounds.some((one) => one.rate !== rate)) throw new RangeError("sounds of several rates");
  const between = Math.round(gap * rate);
  const length = sounds.reduce((sum, { left }) => sum + left.length + between, 0);
  const joined = { left: new Float32Array(length), right: new Float32Array(length), rate };
  let at = 0;
  for (const { left, right } of sounds) {
    joined.left.set(left, at);
    joined.right.set(right, at);
    at += left.length + between;
  }
  return joined;
}
