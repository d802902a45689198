/** One text of a record, and where it stands there. */
interface Said {
  readonly path: string;
  readonly text: string;
}

type Samples = Readonly<Record<string, (path: string) => readonly (readonly unknown[])[]>>;
type Entry = (...args: readonly unknown[]) => unknown;

/** Arguments as an entry may be given them: numbers, among them one and many, then a text. */
const usual = (count: number): readonly (readonly unknown[])[] =>
  [1, 2, 5, "3"].map((one) => Array.from({ length: count }, () => one));
const lists: readonly (readonly unknown[])[] = [[["eins"]], [["eins", "zwei"]]];

/** Every text of a record of words; an entry that makes one is asked with samples. Where it was given what it cannot take, it says nothing. */
export function said(record: unknown, samples: Samples, path = ""): readonly Said[] {
  if (typeof record === "string") return [{ path, text: record }];
  if (typeof record === "function") return asked(record as Entry, samples, path);
  if (typeof record !== "object" || record === null) return [];
  return Object.entries(record).flatMap(([name, one]) =>
    said(one, samples, path === "" ? name : `${path}.${name}`),
  );
}

function asked(entry: Entry, samples: Samples, path: string): readonly Said[] {
  const own = Object.entries(samples).find(([start]) => path.startsWith(start))?.[1];
  const textsOf = (some: readonly (readonly unknown[])[]) =>
    some.flatMap((args) => told(entry, args)).map((text) => ({ path, text }));
  if (own !== undefined) return textsOf(own(path));
  const found = textsOf(usual(entry.length));
  if (found.length > 0) return found;
  if (textsOf(lists).length === 0) throw new Error(`no sample suits ${path}`);
  return textsOf(lists);
}

/** What an entry makes of some arguments; nothing where it wanted others. */
function told(entry: Entry, args: readonly unknown[]): readonly string[] {
  try {
    return [entry(...args) as string];
  } catch {
    return [];
  }
}
