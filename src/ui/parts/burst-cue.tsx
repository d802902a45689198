import { useEffect, useState } from "preact/hooks";
import { type SignalName, signals } from "#core/signals/catalogue.ts";
import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly signal: SignalName;
  readonly playing: boolean;
}

/** 'First' and 'second' light up as each burst is due: one that is missing is missed, and nobody guesses which it was. */
export function BurstCue({ signal, playing }: Props) {
  const words = useWords().sounding.bursts;
  const [now, setNow] = useState<number>();
  const bursts = signals[signal].stretches(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: bursts follow from the signal
  useEffect(() => {
    if (!playing) return;
    const begin = bursts[0]?.start ?? 0; // the silence before it is not played
    const timers = bursts.flatMap(({ start, end }, at) => [
      setTimeout(() => setNow(at), 1000 * (start - begin)),
      setTimeout(() => setNow(undefined), 1000 * (end - begin)),
    ]);
    return () => {
      timers.forEach(clearTimeout);
      setNow(undefined);
    };
  }, [playing, signal]);
  return (
    <p class="bursts" aria-hidden="true">
      {[words.first, words.second].map((name, at) => (
        <span key={name} class={now === at ? "now" : ""}>
          {name}
        </span>
      ))}
    </p>
  );
}
