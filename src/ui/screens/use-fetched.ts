import { useEffect, useState } from "preact/hooks";
import type { Held } from "./use-page.ts";

/** A part of the program that is fetched when it is wanted; nothing until it has come. */
export function useFetched<Part>(
  wanted: boolean,
  fetch: () => Promise<Part>,
  change: Held["change"],
): Part | undefined {
  const [part, setPart] = useState<Part>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: what fetches is written where it is used, and is always the same
  useEffect(() => {
    if (!wanted || part !== undefined) return;
    fetch().then(
      (come) => setPart(() => come),
      () => change((one) => ({ ...one, notice: "not loaded" })),
    );
  }, [wanted, change]);
  return part;
}
