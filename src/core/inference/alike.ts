/** Numbers closer than this are the same. */
const same = 1e-9;

/** What is known of an item, as several rows of numbers: items are compared row by row. */
export type Rowed = readonly Float64Array[];

const agree = (a: Float64Array, b: Float64Array): boolean => {
  if (a === b) return true;
  for (let at = 0; at < a.length; at++)
    if (Math.abs((a[at] as number) - (b[at] as number)) > same) return false;
  return true;
};

/** For each item the number of its class: items all whose rows agree share one. Classes are numbered as they are met. */
export function alike(items: readonly Rowed[]): Int32Array {
  const rows = items[0]?.length ?? 0;
  let classes = new Int32Array(items.length);
  for (let row = 0; row < rows; row++) classes = split(items, row, classes);
  return classes;
}

/** Splits classes by one row. */
function split(items: readonly Rowed[], row: number, before: Int32Array): Int32Array<ArrayBuffer> {
  const firsts = new Map<number, number[]>();
  const classes = new Int32Array(items.length);
  let count = 0;
  for (const [at, item] of items.entries()) {
    const old = before[at] as number;
    const known = firsts.get(old) ?? [];
    firsts.set(old, known);
    const mine = item[row] as Float64Array;
    const twin = known.find((first) => agree(mine, items[first]?.[row] as Float64Array));
    classes[at] = twin === undefined ? count++ : (classes[twin] as number);
    if (twin === undefined) known.push(at);
  }
  return classes;
}

/** How far apart two items are: the sum of all differences; gives up beyond `limit`. */
function distance(a: Rowed, b: Rowed, limit: number): number {
  let sum = 0;
  for (let row = 0; row < a.length && sum < limit; row++) {
    const [mine, other] = [a[row] as Float64Array, b[row] as Float64Array];
    for (let at = 0; at < mine.length; at++)
      sum += Math.abs((mine[at] as number) - (other[at] as number));
  }
  return sum;
}

/** For each item the number of its group, at most `most` groups: the heaviest stand for themselves, the rest join the nearest. */
export function gathered(
  items: readonly Rowed[],
  weights: ArrayLike<number>,
  most: number,
): Int32Array {
  if (items.length <= most) return Int32Array.from(items.keys());
  const heaviest = Array.from(items.keys())
    .sort((a, b) => (weights[b] ?? 0) - (weights[a] ?? 0) || a - b)
    .slice(0, most);
  const groups = Int32Array.from(items, (item) => {
    let [nearest, least] = [0, Number.POSITIVE_INFINITY];
    for (const [group, middle] of heaviest.entries()) {
      const far = distance(item, items[middle] as Rowed, least);
      if (far < least) [nearest, least] = [group, far];
    }
    return nearest;
  });
  for (const [group, middle] of heaviest.entries()) groups[middle] = group;
  return groups;
}

/** The items of each group, groups in order. */
export function members(groups: Int32Array): readonly (readonly number[])[] {
  const found: number[][] = [];
  for (const [at, group] of groups.entries()) {
    const some = found[group] ?? [];
    found[group] = some;
    some.push(at);
  }
  return found;
}
