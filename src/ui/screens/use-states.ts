import { useEffect, useState } from "preact/hooks";
import type { Rig } from "#core/rig/rig.ts";
import { derive, type State } from "#core/session/derive.ts";
import { type Log, rigIn } from "#core/session/log.ts";
import type { Listed } from "#storage/store.ts";

type States = readonly State[];

const known = new WeakMap<Log, States>();
const rigs = new Map<string, Rig>();

/** How the positions of each session stand, worked out one session after the other once the screen stands. */
export function useStates(all: readonly Listed[] | undefined): (log: Log) => States {
  const [, setDone] = useState(0);
  useEffect(() => {
    const left = (all ?? []).filter(({ log }) => isHeard(log) && !known.has(log));
    const [next] = left;
    if (next === undefined) return;
    const soon = setTimeout(() => {
      known.set(next.log, statesOf(next.log));
      setDone((before) => before + 1);
    }, 30);
    return () => clearTimeout(soon);
  });
  return (log) => known.get(log) ?? unheard(log);
}

const isHeard = (log: Log): boolean => log.some(({ entry }) => entry === "finding");
const unheard = (log: Log): States => rigIn(log)?.positions.map(() => "not heard") ?? [];

/** A rig that several sessions draw alike is worked out once. */
function statesOf(log: Log): States {
  const alike = log.map((entry) => {
    if (entry.entry !== "drawing") return entry;
    const text = JSON.stringify(entry.rig);
    const rig = rigs.get(text) ?? entry.rig;
    rigs.set(text, rig);
    return { ...entry, rig };
  });
  try {
    const derived = derive(alike);
    return derived?.rig.positions.map(({ id }) => derived.state(id)) ?? [];
  } catch {
    return unheard(log); // what cannot be worked out is said when it is gone on with
  }
}
