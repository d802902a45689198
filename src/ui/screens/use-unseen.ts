import { useEffect, useState } from "preact/hooks";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Method } from "#core/proving/choice.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import { type Unseen, unseenBy } from "#core/proving/unseen.ts";

type Found = Partial<Readonly<Record<Method, Unseen>>>;

/** What each way of proving cannot see of a kind of lead: one way after the other once the screen stands, so that no press waits for it. */
export function useUnseen(kind: PartKind, ways: readonly Method[]): Found {
  const [found, setFound] = useState<Found>({});
  const next = ways.find((by) => found[by] === undefined);
  useEffect(() => {
    if (next === undefined) return;
    const soon = setTimeout(() =>
      setFound((before) => ({ ...before, [next]: unseenBy(next, leadRig({ kind, by: next })) })),
    );
    return () => clearTimeout(soon);
  }, [kind, next]);
  return found;
}
