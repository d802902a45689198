/**
 * The ears of a simulated person: what somebody would say of a recording from the two cups. Made from the handbook's section 6
 * alone; it knows nothing of the program's own model of a listener, of its diagnosis, or of the fault.
 */

export interface Recording {
  readonly left: Float32Array;
  readonly right: Float32Array;
  readonly rate: number;
}

/** What a person points at, and whether they call it faint. */
export interface Pointed {
  readonly place:
    | "left ear"
    | "right ear"
    | "middle"
    | "off to the left"
    | "off to the right"
    | "all round"
    | "nothing at all";
  readonly faint: boolean;
}

const nothing: Pointed = { place: "nothing at all", faint: false };
const decibels = (ratio: number) => 20 * Math.log10(ratio);

/** Frames of 10 ms in which something sounds, by their sample numbers. */
function sounding({ left, right, rate }: Recording): number[] {
  const frame = Math.round(rate / 100);
  const powers: number[] = [];
  for (let start = 0; start + frame <= left.length; start += frame) {
    let power = 0;
    for (let at = start; at < start + frame; at++)
      power += (left[at] as number) ** 2 + (right[at] as number) ** 2;
    powers.push(power);
  }
  const loudest = Math.max(0, ...powers);
  return powers.flatMap((power, index) => (power > loudest / 10 ? [index * frame] : []));
}

/**
 * Where one sound was. `normal` is the root mean square of such a sound in one cup when nothing is wrong: a person compares with
 * what such sounds usually are.
 */
export function whereWas(recording: Recording, normal: number): Pointed {
  const frame = Math.round(recording.rate / 100);
  let [left, right, together, count] = [0, 0, 0, 0];
  for (const start of sounding(recording))
    for (let at = start; at < start + frame; at++) {
      const [l, r] = [recording.left[at] as number, recording.right[at] as number];
      left += l * l;
      right += r * r;
      together += l * r;
      count++;
    }
  if (count === 0) return nothing;
  const level = decibels(Math.sqrt(Math.max(left, right) / count) / normal);
  if (level < -38) return nothing;
  return { place: placed(left, right, together), faint: level < -12 };
}

function placed(
  left: number,
  right: number,
  together: number,
): Exclude<Pointed["place"], "nothing at all"> {
  const lead = decibels(Math.sqrt((left + 1e-30) / (right + 1e-30)));
  const apart = Math.abs(lead);
  if (together < 0 && apart < 10) return "all round";
  if (apart > 16) return lead > 0 ? "left ear" : "right ear";
  if (apart < 3.5) return "middle";
  return lead > 0 ? "off to the left" : "off to the right";
}

/** Seconds from the beginning of a pair of bursts to the pause between them. */
const pauseAt = 0.7;

/** The two halves of a recording that begins where a pair of bursts begins. */
export function halves({ left, right, rate }: Recording): readonly [Recording, Recording] {
  const pause = Math.round(pauseAt * rate);
  const part = (from: number, to: number): Recording => ({
    left: left.subarray(from, to),
    right: right.subarray(from, to),
    rate,
  });
  return [part(0, pause), part(pause, left.length)];
}
