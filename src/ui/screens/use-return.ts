import { useState } from "preact/hooks";
import type { Granted } from "#audio/granted.ts";
import type { Broken, Found, MeasurerTrouble } from "#audio/measurer.ts";
import type { Capture } from "#core/measurement/capture.ts";
import type { NotMeasured } from "#core/measurement/return.ts";
import {
  type MatrixTold,
  matrixOf,
  type NotHealthy,
  notHealthy,
  type Taken,
} from "#core/proving/lead-matrix.ts";
import type { Gains } from "#core/rig/effect.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Ways } from "./page.ts";
import type { Instruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";

/** What levels are told against. */
export type Against = "healthy" | "as it comes";

/** Why there is no result: a capture that cannot be judged, one the browser worked over, a lead that is not healthy, or no worker. */
export type Refused =
  | { readonly why: "not measured"; readonly how: NotMeasured }
  | { readonly why: "processed"; readonly granted: Granted }
  | { readonly why: "not healthy"; readonly how: NotHealthy }
  | { readonly why: "no worker" };

/** Nothing is measured yet, or it came to nothing. */
export interface BeforeStep {
  readonly at: "before";
  readonly found?: Found;
  readonly trouble?: MeasurerTrouble;
}

/** Where a measurement stands. */
export type ReturnStep =
  | BeforeStep
  | { readonly at: "level" }
  | { readonly at: "by hand" }
  | { readonly at: "measuring"; readonly done: Seconds; readonly total: Seconds }
  | { readonly at: "judging" }
  /** The healthy lead was measured; the one in question takes its place. */
  | { readonly at: "swap" }
  | { readonly at: "refused"; readonly refused: Refused; readonly capture?: Capture }
  | ({ readonly at: "told" } & Told);

/** What was measured, and what was recorded of it. */
interface Told {
  readonly taken: Taken;
  readonly granted: Granted;
  readonly capture: Capture;
}

type OnMatrix = (told: MatrixTold) => void;

interface Wanted {
  readonly ways: Ways;
  readonly against: Against;
  readonly meant: Gains | undefined;
  readonly onMatrix: OnMatrix;
}

/** A measurement that was judged, or how it ended before. */
export type Outcome = ReturnStep | Told;

const refusal = (refused: Refused, capture?: Capture): ReturnStep => ({
  at: "refused",
  refused,
  ...(capture ? { capture } : {}),
});

/** Plays and records once, and works it out; of what was recorded only a part, where one is asked for. */
export async function measureOnce(
  { measurer, judging }: Instruments,
  { input }: Ways,
  onStep: (step: Extract<ReturnStep, { at: "measuring" | "judging" }>) => void,
  only: (capture: Capture) => Capture = (capture) => capture,
): Promise<Outcome> {
  onStep({ at: "measuring", done: 0, total: 1 });
  const ended = await measurer.measure({
    input,
    onProgress: (how) => onStep({ at: "measuring", ...how }),
  });
  if (ended.ended !== "measured") return beforeOf(ended);
  onStep({ at: "judging" });
  const { capture, granted, level } = ended;
  if (granted.processed.length > 0) return refusal({ why: "processed", granted }, capture);
  const measured = await judging(only(capture)).catch(() => undefined);
  if (measured === undefined) return refusal({ why: "no worker" }, capture);
  if ("refused" in measured) return refusal({ why: "not measured", how: measured }, capture);
  return { taken: { measured, level }, granted, capture };
}

const beforeOf = (ended: Broken): BeforeStep =>
  ended.ended === "trouble" ? { at: "before", trouble: ended.why } : { at: "before" };

/** Finds the level; undefined when it was found, else how it ended. */
export async function levelFirst(
  { measurer }: Instruments,
  { input }: Ways,
): Promise<BeforeStep | undefined> {
  const found = await measurer.findLevel({ input });
  if (found.ended !== "found") return beforeOf(found);
  return found.found === "clipped" ? { at: "before", found } : undefined;
}

/** One measurement after another through a lead: the level once, then whole playings, the healthy lead's first where one is wanted. */
export function useReturn(held: Held, instruments: Instruments, wanted: Wanted) {
  const [step, setStep] = useState<ReturnStep>({ at: "before" });
  const [healthy, setHealthy] = useState<Taken>();
  const { ways, against, meant, onMatrix } = wanted;
  const tell = ({ taken, granted, capture }: Told) => {
    const known = against === "healthy" ? healthy : undefined;
    if (against === "as it comes" || known) {
      const told = matrixOf(taken, known, meant);
      setStep({ at: "told", taken, granted, capture });
      if (told) onMatrix(told);
      return;
    }
    const how = notHealthy(taken, meant);
    if (how) return setStep(refusal({ why: "not healthy", how }, capture));
    setHealthy(taken);
    setStep({ at: "swap" });
  };
  const measure = async () => {
    held.silence();
    const outcome = await measureOnce(instruments, ways, setStep);
    if ("at" in outcome) setStep(outcome);
    else tell(outcome);
  };
  const start = async () => {
    held.silence();
    setStep({ at: "level" });
    const ended = await levelFirst(instruments, ways);
    if (ended) setStep(ended);
    else await measure();
  };
  const raise = async () => {
    held.silence();
    setStep({ at: "by hand" });
    const ended = await instruments.measurer.watch("multitone", {
      input: ways.input,
      onBlock: () => {},
    });
    setStep((now) => (now.at === "by hand" ? beforeOf(ended) : now));
  };
  const again = (anew: boolean) => {
    if (anew) setHealthy(undefined);
    setStep({ at: "before" });
  };
  return { step, healthy, start, raise, measure, again };
}

export type ReturnBout = ReturnType<typeof useReturn>;
