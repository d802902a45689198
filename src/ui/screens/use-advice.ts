import { useEffect, useState } from "preact/hooks";
import type { Plan } from "./plan.ts";
import { type Advised, advising } from "./plan-advise.ts";

/** What the search hangs on. */
const keyOf = ({ from, into, socket, want, stageUnknown }: Plan): string =>
  JSON.stringify([from, into, socket, want, stageUnknown]);

/** Milliseconds of searching between two moments in which a press is answered. */
const slice = 10;

/** The advice for a plan once it is found; it is searched for between frames, so that no press waits for it. */
export function useAdvice(plan: Plan): Advised | undefined {
  const key = keyOf(plan);
  const [found, setFound] = useState<{ readonly key: string; readonly advised: Advised }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key is all of the plan that is read
  useEffect(() => {
    const search = advising(plan);
    let soon = setTimeout(function step() {
      const until = performance.now() + slice;
      let one = search.next();
      while (!one.done && performance.now() < until) one = search.next();
      if (one.done) setFound({ key, advised: one.value });
      else soon = setTimeout(step);
    }, 60);
    return () => clearTimeout(soon);
  }, [key]);
  return found?.key === key ? found.advised : undefined;
}
