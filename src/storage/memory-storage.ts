/** A fake of the browser's storage. It holds what it is given, or refuses as a full disk does. */
export function createMemoryStorage({
  full = false,
  texts = {},
}: {
  full?: boolean;
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
    setItem: (name, text) => {
      if (full) throw new DOMException("the disk is full", "QuotaExceededError");
      held.set(name, text);
    },
  };
}
