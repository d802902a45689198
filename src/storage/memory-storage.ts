/** A fake of the browser's storage. It holds what it is given. */
export function createMemoryStorage({
  texts = {},
}: {
  texts?: Readonly<Record<string, string>>;
} = {}): Storage {
  const held = new Map(Object.entries(texts));
  return {
    get length() {
      return held.size;
    },
    clear: () => held.clear(),
    getItem: (name) => held.get(name) ?? null,
    key: (index) => [...held.keys()][index] ?? null,
    removeItem: (name) => void held.delete(name),
    setItem: (name, text) => void held.set(name, text),
  };
}
