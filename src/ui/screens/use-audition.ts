import { useEffect, useRef, useState } from "preact/hooks";
import { type Audition, auditionOf, type Version } from "#core/hearing/audition.ts";
import type { EarsAt } from "#core/hearing/response.ts";
import type { Sound } from "#core/signals/sound.ts";
import { prepared } from "./prepare.ts";
import type { Held } from "./use-page.ts";

/** What is to be compared by ear; its key tells it from any other. */
export interface Comparison {
  readonly key: string;
  readonly programme: () => Sound;
  readonly chains: () => Readonly<Record<Version, EarsAt>>;
}

/** Two versions of one programme, made ready when they are first asked for. */
export interface Auditioning {
  /** 0 to 1 while it is made ready. */
  readonly progress: number | undefined;
  /** It could not be made into anything that may be played. */
  readonly refused: boolean;
  /** Begins with a version, or goes over to it without a click. To be called in a press. */
  readonly hear: (version: Version) => void;
  /** Lets go of what is being made ready. */
  readonly stop: () => void;
}

export function useAudition({ edges, change }: Held, what: Comparison): Auditioning {
  const { player } = edges;
  const made = useRef<{ readonly key: string; readonly audition: Audition } | undefined>(undefined);
  const [progress, setProgress] = useState<number>();
  const [refused, setRefused] = useState(false);
  const stop = useRef(new AbortController());
  const making = useRef(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another key is another sound
  useEffect(() => {
    stop.current = new AbortController();
    setRefused(false);
    return () => {
      stop.current.abort();
      making.current = false;
      setProgress(undefined);
      player.silence();
    };
  }, [what.key]);
  const begin = async (first: Version): Promise<void> => {
    const { signal } = stop.current;
    if (made.current?.key !== what.key) {
      setProgress(0);
      making.current = true;
      const work = auditionOf(what.programme(), what.chains());
      const audition = await prepared(work, signal, setProgress);
      if (signal.aborted) return;
      making.current = false;
      setProgress(undefined);
      if (audition === undefined || "refused" in audition) return setRefused(true);
      made.current = { key: what.key, audition };
    }
    change((page) => ({ ...page, sounded: true }));
    await player.audition(made.current.audition, { loop: true, first });
  };
  return {
    progress,
    refused,
    stop: () => {
      stop.current.abort();
      stop.current = new AbortController();
      making.current = false;
      setProgress(undefined);
    },
    hear: (version) => {
      if (making.current) return;
      const here = made.current?.key === what.key;
      // As it is now: a press may come before the screen has been drawn anew.
      if (here && player.world().heard !== undefined) return player.hear(version);
      player.silence();
      player.handOff();
      void begin(version);
    },
  };
}
