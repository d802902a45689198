/**
 * Those that are alike, or joined by others that are, in one group; groups, and what is in them, in the order they came. `alike` must
 * be the same both ways round.
 */
export function groupedBy<One>(
  all: readonly One[],
  alike: (a: One, b: One) => boolean,
): readonly (readonly [One, ...One[]])[] {
  const grouped = new Set<One>();
  return all.flatMap((first) => {
    if (grouped.has(first)) return [];
    const group = joinedTo(first, all, alike);
    for (const one of group) grouped.add(one);
    return [[first, ...all.filter((one) => one !== first && group.has(one))] as const];
  });
}

/** Itself, what is like it, what is like that, and so on. */
function joinedTo<One>(
  first: One,
  all: readonly One[],
  alike: (a: One, b: One) => boolean,
): ReadonlySet<One> {
  const group = new Set([first]);
  for (const at of group) for (const one of all) if (alike(at, one)) group.add(one);
  return group;
}
