import type { Link } from "#core/rig/chain.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";

/** Where along a chain a fault sits, in links from its start: 1.5 is the middle of the second. Nothing where that is not known. */
export function placeAlong(
  rig: BuiltRig,
  links: readonly Link[],
  fault: RigFault,
): number | undefined {
  const at = links.findIndex(({ part }) => part === fault.part);
  if (at < 0) return undefined;
  const end = rig.plugged.find(
    ({ part, plug }) => part === fault.part && fault.at.startsWith(plug),
  );
  if (end === undefined) return at + 0.5;
  return at + (links[at - 1]?.part === end.into ? 0.2 : 0.8);
}

/** What every position's chain begins with: the trunk as a picture shows it, without headphones and people. */
export function sharedLinks(chains: readonly (readonly Link[])[]): readonly Link[] {
  const [first = []] = chains;
  const end = first.findIndex(
    ({ part, family }, at) =>
      family === "headphones" ||
      family === "person" ||
      chains.some((chain) => chain[at]?.part !== part),
  );
  return end < 0 ? first : first.slice(0, end);
}

export const isBox = (link: Link | undefined): boolean =>
  link?.family === "source" || link?.family === "amplifier";
