/** Values made once for each key; of many, those asked for last are kept. */
export interface Recent<Value> {
  readonly of: (key: string, make: () => Value) => Value;
}

/** Keeps so many. */
export function createRecent<Value>(most: number): Recent<Value> {
  const known = new Map<string, Value>();
  return {
    of: (key, make) => {
      const value = known.get(key) ?? make();
      known.delete(key);
      known.set(key, value);
      const [oldest] = known.keys();
      if (known.size > most && oldest !== undefined) known.delete(oldest);
      return value;
    },
  };
}
