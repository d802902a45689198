import { useEffect, useRef, useState } from "preact/hooks";
import type { Found, Measurer } from "#audio/measurer.ts";
import { FlexTap } from "./flex-tap.ts";
import type { Ways } from "./page.ts";
import type { Held } from "./use-page.ts";

/** Before it, while the level is found, while it watches, and after. */
type Phase = "before" | "level" | "watching" | "over";

/** A run of the watch. */
export interface FlexBout {
  readonly phase: Phase;
  readonly tap: FlexTap;
  /** What the level was found to be, where it was looked for. */
  readonly found: Found | undefined;
  /** Finds the level first, or leaves that to a hand. */
  readonly start: (byHand: boolean) => Promise<void>;
  /** Goes back to how it is hooked up. */
  readonly again: () => void;
}

/** Runs the watch: the level first, then the tones until somebody stops them. Another level begins it anew. */
export function useFlex(held: Held, measurer: Measurer, { input, returns }: Ways): FlexBout {
  const [phase, setPhase] = useState<Phase>("before");
  const [found, setFound] = useState<Found>();
  const tap = useRef(new FlexTap(returns));
  useEffect(() => {
    let level = measurer.world().level;
    return measurer.subscribe(() => {
      const next = measurer.world();
      if (next.doing === "watching" && next.level !== level) tap.current.restart();
      level = next.level;
    });
  }, [measurer]);
  const watch = async () => {
    const own = new FlexTap(returns);
    tap.current = own;
    setPhase("watching");
    await measurer.watch("flex-tones", { input, onOpen: own.onOpen, onBlock: own.onBlock });
    setPhase(own.watch?.state.status.status === "learning" || !own.watch ? "before" : "over");
  };
  const start = async (byHand: boolean) => {
    held.silence();
    setFound(undefined);
    if (byHand) return watch();
    setPhase("level");
    const level = await measurer.findLevel({ input });
    setFound(level);
    if (level.ended !== "found" || level.found === "clipped") return setPhase("before");
    return watch();
  };
  return { phase, tap: tap.current, found, start, again: () => setPhase("before") };
}
