/**
 * Every set of at most `most` items whose members may all stand together, two by two: the empty set, then singles in order,
 * then pairs, the earlier first, then threes. A set that may not stand is not built upon.
 */
export function setsOf<Item>(
  items: readonly Item[],
  most: number,
  together: (first: Item, second: Item) => boolean = () => true,
): readonly (readonly Item[])[] {
  let last: readonly Open<Item>[] = [{ members: [], next: 0 }];
  const all = [...last];
  for (let size = 1; size <= most && last.length > 0; size++) {
    last = last.flatMap((set) => grown(set, items, together));
    for (const set of last) all.push(set);
  }
  return all.map(({ members }) => members);
}

/** A set, and the first item that may still join it. */
interface Open<Item> {
  readonly members: readonly Item[];
  readonly next: number;
}

function grown<Item>(
  { members, next }: Open<Item>,
  items: readonly Item[],
  together: (first: Item, second: Item) => boolean,
): readonly Open<Item>[] {
  const found: Open<Item>[] = [];
  for (let at = next; at < items.length; at++) {
    const item = items[at] as Item;
    if (members.every((member) => together(member, item)))
      found.push({ members: [...members, item], next: at + 1 });
  }
  return found;
}
