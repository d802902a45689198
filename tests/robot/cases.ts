import { hide } from "#core/bench/bench.ts";
import { isUnlisted } from "#core/diagnosis/fault-sets.ts";
import { clientId } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { modelFor } from "#core/session/derive.ts";
import { english } from "#core/words/english.ts";
import { faultText } from "#core/words/fault-text.ts";
import type { Walked } from "./robot.ts";

const [first] = builtInRigs;
if (first === undefined) throw new Error("there is no built-in rig");
export const rig = first;
const { model: made, groups } = modelFor(rig);
export const model = made;

/** One rig number for every kind of fault: a fault of a part, wherever that part stands. */
export interface Case {
  readonly seed: number;
  readonly fault: RigFault;
  readonly position: string;
  readonly group: (typeof groups)[number];
}

export const kindOf = ({ part, at, name }: RigFault) =>
  `${part} ${at} ${name}`.replace(/ \d+/g, "");

const audible = groups.filter(({ inaudible }) => !inaudible);

/** Every kind the simulated rig can play steadily; people who mirror have tests of their own, and a wanted feed is no fault. */
export const kinds = new Set(
  audible
    .flatMap(({ faults }) => faults)
    .filter((fault) => !isUnlisted(fault) && fault.name !== "mirrors left and right")
    .filter(({ part }) => part !== clientId)
    .filter(({ comesAndGoes }) => !comesAndGoes)
    .map(kindOf),
);

/** One case of every kind there is, by searching the rig numbers. */
export function casesOfEveryKind(): readonly Case[] {
  const homes = new Map(audible.flatMap((group) => group.faults.map((fault) => [fault.id, group])));
  const found = new Map<string, Case>();
  for (let seed = 1; found.size < kinds.size && seed <= 1_000_000; seed++) {
    const fault = hide(rig, seed).hidden;
    const group = homes.get(fault.id);
    if (group === undefined || fault.comesAndGoes || found.has(kindOf(fault))) continue;
    const [id] = group.branch.positions;
    const position = model.rig.positions.find((one) => one.id === id)?.name ?? "";
    found.set(kindOf(fault), { seed, fault, position, group });
  }
  return [...found.values()];
}

/**
 * Whether the last screen names some fault of the planted one's group, and how sure it says it is; a rig that a move has mended counts, as the
 * curtain knows.
 */
export function namedBy({ heading, text, end, cured }: Walked, { group }: Case) {
  const texts = group.faults.map((fault) => faultText(english, model.rig, fault).toLowerCase());
  const lead =
    `${heading}\n${text.match(/(The likeliest|It was|Most likely it was): .*? in 100/)?.[0] ?? ""}`.toLowerCase();
  const said = texts.some((one) => lead.includes(one));
  return {
    named: cured || (end === "verdict" && said),
    /** It was named as well as mended. */
    said,
    sure: text.match(/(\d+|less than 1) in 100/)?.[0] ?? "",
  };
}
