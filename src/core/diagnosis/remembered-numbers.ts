/** A function from small whole numbers to numbers that works each answer out once; faster than a map where there are thousands. */
export function rememberedNumbers(work: (key: number) => number): (key: number) => number {
  let known = new Float64Array(1024).fill(Number.NaN);
  return (key) => {
    if (key >= known.length) known = grown(known, key);
    const found = known[key] as number;
    if (!Number.isNaN(found)) return found;
    const made = work(key);
    known[key] = made;
    return made;
  };
}

function grown(known: Float64Array, key: number): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(Math.max(2 * known.length, key + 1)).fill(Number.NaN);
  longer.set(known);
  return longer;
}
