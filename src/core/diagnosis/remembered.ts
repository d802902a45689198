/** A function that works each answer out once. */
export function remembered<Key, Value>(work: (key: Key) => Value): (key: Key) => Value {
  const known = new Map<Key, Value>();
  return (key) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = work(key);
    known.set(key, made);
    return made;
  };
}
