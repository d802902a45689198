import { useEffect, useRef, useState } from "preact/hooks";
import type { Making, Packing } from "#worker/packing.ts";
import type { Held } from "./use-page.ts";

/** Where a file to save stands. */
export type MakingState =
  | { readonly at: "rest" }
  | { readonly at: "making"; readonly share: number }
  | { readonly at: "made"; readonly address: string; readonly megabytes: number }
  | { readonly at: "failed" };

/** A file that is made when it is asked for, and stays at an address of this page until the screen goes. */
export function useMaking({ edges }: Held) {
  const [state, setState] = useState<MakingState>({ at: "rest" });
  const making = useRef<Making>(undefined);
  useEffect(() => () => making.current?.stop(), []);
  useEffect(() => () => void (state.at === "made" && URL.revokeObjectURL(state.address)), [state]);
  const make = async (what: Parameters<Packing>[0]) => {
    setState({ at: "making", share: 0 });
    making.current = edges.packing(what, (share) => setState({ at: "making", share }));
    try {
      const file = await making.current.file;
      if (file === undefined) return setState({ at: "rest" });
      setState({ at: "made", address: URL.createObjectURL(file), megabytes: file.size / 1e6 });
    } catch {
      setState({ at: "failed" });
    }
  };
  return { state, make, stop: () => making.current?.stop() };
}
