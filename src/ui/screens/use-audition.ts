import { useLayoutEffect, useRef, useState } from "preact/hooks";
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
  const made = useRef<Made | undefined>(undefined);
  const making = useRef<AbortController | undefined>(undefined);
  const [progress, setProgress] = useState<number>();
  const [refused, setRefused] = useState(false);
  const stop = () => {
    making.current?.abort();
    making.current = undefined;
    setProgress(undefined);
  };
  // Before the next press can come, which belongs to the new sound.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another key is another sound
  useLayoutEffect(() => {
    setRefused(false);
    return () => {
      stop();
      player.silence();
    };
  }, [what.key]);
  const begin = async (first: Version): Promise<void> => {
    const here = new AbortController();
    making.current = here;
    const unwatch = onSilence(player, stop);
    const ready =
      made.current?.key === what.key ? made.current : await make(what, here, setProgress);
    unwatch();
    if (here.signal.aborted) return;
    stop();
    if (ready === undefined) return setRefused(true);
    made.current = ready;
    change((page) => ({ ...page, sounded: true }));
    await player.audition(ready.audition, { loop: true, first });
  };
  const hear: Auditioning["hear"] = (version) => {
    if (making.current) return;
    const here = made.current?.key === what.key;
    // As it is now: a press may come before the screen has been drawn anew.
    if (here && player.world().heard !== undefined) return player.hear(version);
    player.silence();
    // Its own headphones, and no hand is on any gear; but a volume that was turned up is still up until somebody says otherwise.
    if (player.world().turnedUp) return;
    player.handOff();
    void begin(version);
  };
  return { progress, refused, hear, stop };
}

/** Calls back once silence is asked for: it means what is being made ready as well. Returns how to stop that. */
function onSilence({ world, subscribe }: Held["edges"]["player"], back: () => void): () => void {
  const { silences } = world();
  return subscribe(() => {
    if (world().silences !== silences) back();
  });
}

interface Made {
  readonly key: string;
  readonly audition: Audition;
}

/** Nothing where it was stopped, or where nothing in it may be played. */
async function make(
  { key, programme, chains }: Comparison,
  { signal }: AbortController,
  onProgress: (done: number) => void,
): Promise<Made | undefined> {
  onProgress(0);
  const audition = await prepared(auditionOf(programme(), chains()), signal, onProgress);
  return audition === undefined || "refused" in audition ? undefined : { key, audition };
}
