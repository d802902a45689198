import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { hissAudition } from "#core/hearing/hiss.ts";
import type { Decibels } from "#core/units/units.ts";
import { prepared } from "./prepare.ts";
import type { Held } from "./use-page.ts";

/** A programme's stand-in and its hiss, to be heard. */
interface HissHeard {
  /** It is being made ready. */
  readonly making: boolean;
  readonly refused: boolean;
  /** Both, from the beginning. To be called in a press. */
  readonly hear: () => void;
}

/** Whoever hears nothing of it may turn the volume up: afterwards it is silent until that is back down. */
export function useHiss({ edges, change }: Held, below: Decibels): HissHeard {
  const { player } = edges;
  const making = useRef<AbortController | undefined>(undefined);
  const [state, setState] = useState<"making" | "refused">();
  const stop = () => {
    making.current?.abort();
    making.current = undefined;
    setState(undefined);
  };
  useLayoutEffect(
    () => () => {
      making.current?.abort();
      player.silence();
    },
    [player],
  );
  const begin = async () => {
    const here = new AbortController();
    making.current = here;
    setState("making");
    const { silences } = player.world();
    const unwatch = player.subscribe(() => {
      if (player.world().silences !== silences) stop();
    });
    const audition = await prepared(hissAudition(below, player.rate()), here.signal, () => {});
    unwatch();
    if (here.signal.aborted) return;
    making.current = undefined;
    if (audition === undefined || "refused" in audition) return setState("refused");
    setState(undefined);
    change((page) => ({ ...page, sounded: true }));
    await player.audition(audition, { turnedUp: true });
  };
  return {
    making: state === "making",
    refused: state === "refused",
    hear: () => {
      if (making.current !== undefined) return;
      player.silence();
      void begin();
    },
  };
}
