import type { State } from "#core/inference/knot.ts";
import type { Joined } from "#core/inference/rows.ts";
import { type Move, survives } from "#core/rig/moves.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Branch } from "./branch.ts";
import { createHistories, type Histories } from "./histories.ts";
import type { Model } from "./model.ts";
import { remembered } from "./remembered.ts";

type FaultLists = readonly (readonly RigFault[])[];

/** A rig as a list of moves has left it: what each fault set did in each epoch. Kept from one answer to the next. */
export interface Era {
  readonly histories: Histories;
  readonly joined: Joined;
  /** A branch's sets before anything was found, with their behaviour over time. */
  readonly states: (branch: Branch) => readonly State[];
  /** The branch's fault sets after the moves of all epochs before one; the last epoch is now. */
  readonly setsAt: (branch: Branch, epoch: number) => FaultLists;
  readonly now: number;
  /** One history that stands for all that would be answered alike at a position, in every epoch. */
  readonly standFor: (position: string) => (history: number) => number;
}

const eras = new WeakMap<Model, Map<string, Era>>();

/** The era after some moves, made once for each list of them. */
export function eraAfter(model: Model, moves: readonly Move[]): Era {
  const known = eras.get(model) ?? new Map<string, Era>();
  eras.set(model, known);
  const key = moves.map(({ move, place }) => `${move} ${place}`).join("\n");
  const era = known.get(key) ?? eraOf(model, moves);
  known.set(key, era);
  return era;
}

function eraOf(model: Model, moves: readonly Move[]): Era {
  const histories = createHistories(model.pool, moves.length + 1);
  const left = (faults: readonly RigFault[], epoch: number) =>
    faults.filter((fault) => moves.slice(0, epoch).every((move) => survives(fault, move)));
  const epochs = remembered((branch: Branch): readonly FaultLists[] => [
    branch.faultsIn,
    ...moves.map((_, before) => branch.faultsIn.map((faults) => left(faults, before + 1))),
  ]);
  const setsAt = (branch: Branch, epoch: number) => epochs(branch)[epoch] ?? branch.faultsIn;
  const kinds = new Map<string, readonly State[]>();
  const states = (branch: Branch): readonly State[] => {
    if (moves.length === 0) return branch.states;
    const made = branch.states.map((state, at) => ({
      ...state,
      behaviour: histories.of((epoch) =>
        epoch === 0 ? state.behaviour : branch.behaviour(setsAt(branch, epoch)[at] ?? []),
      ),
    }));
    const key = made.map(({ weight, behaviour }) => `${weight} ${behaviour}`).join();
    const kind = kinds.get(key) ?? made;
    kinds.set(key, kind);
    return kind;
  };
  return {
    histories,
    joined: new WeakMap(),
    states: remembered(states),
    setsAt,
    now: moves.length,
    standFor: remembered((position: string) => {
      const stand = model.standFor(position);
      return moves.length === 0
        ? stand
        : (history: number) => histories.of((epoch) => stand(histories.at(history, epoch)));
    }),
  };
}
