import { catalogue } from "#core/parts/catalogue.ts";
import type { Parameters, Quantity } from "#core/parts/kind.ts";
import { busesOf, solved } from "#core/rig/circuit-step.ts";
import { reachInto } from "#core/rig/reach.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { partsInto, stretchBlock } from "./chain-deck.ts";
import { redrawn } from "./redrawn.ts";
import { type Case, same, takersOf } from "./simulated.ts";

/** How many sockets there are decides which plugs have a place: those are chosen rig by rig. */
const isCount = ({ unit }: Quantity): boolean => unit === "outputs" || unit === "sets";

/** Every number that may be said of a kind, at its least and at its most. */
const endsOf = (parameters: Parameters): (readonly [name: string, value: number])[] =>
  Object.entries(parameters).flatMap(([name, parameter]) =>
    "choices" in parameter || isCount(parameter)
      ? []
      : [[name, parameter.least] as const, [name, parameter.most] as const],
  );

/** The same rig, with another number said of one of its parts. */
const changed = (rig: BuiltRig, id: string, name: string, value: number): BuiltRig =>
  redrawn({ ...rig, name: `${rig.name}, ${id} with ${name} ${value}` }, (part) =>
    part.id === id ? { ...part.settings, [name]: value } : (part.settings ?? {}),
  );

/** For the first part of each kind, the healthy circuits it stands in, with each of its numbers at either end. */
export const numberCases = (rigs: readonly BuiltRig[]): Case[] =>
  Object.entries(catalogue).flatMap(([kind, { parameters }]) => {
    const rig = rigs.find(({ parts }) => parts.some((part) => part.kind === kind));
    const id = rig?.parts.find((part) => part.kind === kind)?.id;
    if (rig === undefined || id === undefined) throw new Error(`no rig has a ${kind}`);
    return endsOf(parameters).flatMap(([name, value]) =>
      healthyCases(changed(rig, id, name, value), id),
    );
  });

const healthyCases = (rig: BuiltRig, id: string): Case[] =>
  takersOf(rig)
    .filter((taker) => partsInto(rig, taker).includes(id))
    .map((taker) => ({
      of: rig.part(id).kind,
      name: `${rig.name}, into ${taker}`,
      ours: (at) => solved(rig, taker, [], at),
      block: stretchBlock(rig, taker, []),
      signals: busesOf(rig, reachInto(rig, taker).from).length,
      heard: same,
    }));
