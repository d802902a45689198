/** Gives each of some sparse whole numbers a small one, in the order in which they are met. Kept for long, so that what is kept by it is small. */
export function createDense(): (key: number) => number {
  let known = new Int32Array(1024).fill(-1);
  let count = 0;
  return (key) => {
    if (key >= known.length) known = longer(known, key);
    const found = known[key] as number;
    if (found >= 0) return found;
    known[key] = count;
    return count++;
  };
}

function longer(known: Int32Array, key: number): Int32Array<ArrayBuffer> {
  const made = new Int32Array(Math.max(2 * known.length, key + 1)).fill(-1);
  made.set(known);
  return made;
}

/** A function from whole numbers to numbers that works each answer out once; faster than a map where there are thousands. */
export function rememberedNumbers(
  work: (key: number) => number,
  dense: (key: number) => number,
): (key: number) => number {
  let known = new Float64Array(256).fill(Number.NaN);
  return (key) => {
    const at = dense(key);
    if (at >= known.length) known = grown(known, at);
    const found = known[at] as number;
    if (!Number.isNaN(found)) return found;
    const made = work(key);
    known[at] = made;
    return made;
  };
}

function grown(known: Float64Array, at: number): Float64Array<ArrayBuffer> {
  const made = new Float64Array(Math.max(2 * known.length, at + 1)).fill(Number.NaN);
  made.set(known);
  return made;
}
