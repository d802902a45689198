import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import type { Measurer } from "#audio/measurer.ts";
import type { Recorder } from "#audio/recorder.ts";
import type { Judging } from "#worker/judging.ts";
import type { Measuring } from "#worker/measuring.ts";

/** All that measures. It is fetched when a screen wants it: the first screen does without. */
export interface Instruments {
  readonly recorder: Recorder;
  readonly measurer: Measurer;
  /** What was recorded here, measured. */
  readonly judging: Judging;
  /** A recording made elsewhere, read and measured. */
  readonly reading: Measuring;
}

/** What measures, as the page holds it. */
interface Bench {
  /** Undefined until it was wanted and has come. */
  readonly instruments: Instruments | undefined;
  readonly fetchInstruments: () => void;
  /** Something for instruments is played, or an input is open. */
  readonly measuring: boolean;
}

/** Fetches what measures when it is wanted, once, and again on a later wish where it did not come. */
export function useBench(load: () => Promise<Instruments>, onMissing: () => void): Bench {
  const [instruments, setInstruments] = useState<Instruments>();
  const [measuring, setMeasuring] = useState(false);
  const asked = useRef(false);
  useEffect(() => {
    if (instruments === undefined) return;
    const { measurer } = instruments;
    measurer.warm();
    return measurer.subscribe(() => setMeasuring(measurer.world().doing !== "nothing"));
  }, [instruments]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the page is handed the same edges for good
  const fetchInstruments = useCallback(() => {
    if (asked.current) return;
    asked.current = true;
    load().then(setInstruments, () => {
      asked.current = false;
      onMissing();
    });
  }, []);
  return { instruments, fetchInstruments, measuring };
}

/** What measures, fetched for the screen that calls this; its sound and its input end with the screen. */
export function useInstruments({
  instruments,
  fetchInstruments,
}: Pick<Bench, "instruments" | "fetchInstruments">): Instruments | undefined {
  useEffect(fetchInstruments, [fetchInstruments]);
  useEffect(() => () => instruments?.measurer.silence(), [instruments]);
  return instruments;
}
