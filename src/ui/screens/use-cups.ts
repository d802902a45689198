import { useState } from "preact/hooks";
import type { CupTaken } from "#core/measurement/cups-told.ts";
import { oneChannel } from "#core/measurement/microphone.ts";
import type { Seconds } from "#core/units/units.ts";
import type { Side } from "#ui/parts/effect-lanes.ts";
import type { Ways } from "./page.ts";
import type { Instruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import {
  type BeforeStep,
  levelFirst,
  measureOnce,
  type Outcome,
  type Refused,
} from "./use-return.ts";

/** Where it stands with the cups, and which is at the microphone. */
export type CupStep =
  | { readonly at: "hold"; readonly side: Side; readonly before?: BeforeStep }
  | { readonly at: "level"; readonly side: Side }
  | {
      readonly at: "measuring";
      readonly side: Side;
      readonly done: Seconds;
      readonly total: Seconds;
    }
  | { readonly at: "judging"; readonly side: Side }
  | { readonly at: "refused"; readonly side: Side; readonly refused: Refused }
  | { readonly at: "told"; readonly left: CupTaken; readonly right: CupTaken };

type Taken = Readonly<Partial<Record<Side, CupTaken>>>;

export const otherSide = (side: Side): Side => (side === "left" ? "right" : "left");

const isDead = ({ heard }: CupTaken): boolean => "refused" in heard;

/** What a cup gave; nothing where it was not measured. One whose tones are not there is measured: it is dead. */
function cupIn(outcome: Outcome, level: number): CupTaken | undefined {
  if (!("at" in outcome))
    return { heard: outcome.taken.measured, level: outcome.taken.level ?? level };
  if (outcome.at !== "refused" || outcome.refused.why !== "not measured") return undefined;
  const { how } = outcome.refused;
  return how.refused === "too quiet" ? { heard: how, level } : undefined;
}

/** Where it stands after a try that measured nothing. */
function stepOf(outcome: Outcome, side: Side): CupStep {
  if ("at" in outcome && outcome.at === "refused") return { ...outcome, side };
  if (!("at" in outcome) || outcome.at !== "before") return { at: "hold", side };
  return { at: "hold", side, before: outcome };
}

/** Whether the level still stands that was found at the other cup. A dead one has found none. */
const levelled = ({ measurer }: Instruments, other: CupTaken | undefined): boolean =>
  other !== undefined && !isDead(other) && measurer.world().level === other.level;

/** One cup: its level from the start level up, where none stands; then its tones. */
async function heardOnce(
  instruments: Instruments,
  ways: Ways,
  { side, stands }: { readonly side: Side; readonly stands: boolean },
  onStep: (step: CupStep) => void,
): Promise<Outcome> {
  const { measurer } = instruments;
  if (!stands) {
    measurer.use(measurer.world().route);
    onStep({ at: "level", side });
    const ended = await levelFirst(instruments, ways);
    if (ended) return ended;
  }
  return measureOnce(instruments, ways, (now) => onStep({ ...now, side }), oneChannel);
}

/**
 * Each cup once. The level is found at the first and kept for the other; it is found again, from the start level up, where the first one is dead and would
 * say nothing of it, or where it was lost by some trouble.
 */
export function useCups(held: Held, instruments: Instruments, ways: Ways) {
  const [step, setStep] = useState<CupStep>({ at: "hold", side: "left" });
  const [taken, setTaken] = useState<Taken>({});
  const told = (side: Side, cup: CupTaken, other: CupTaken | undefined) => {
    if (other === undefined) return setStep({ at: "hold", side: otherSide(side) });
    const [left, right] = side === "left" ? [cup, other] : [other, cup];
    setStep({ at: "told", left, right });
  };
  /** Anew: whatever the other cup gave is let go, and it is heard again afterwards. */
  const listen = async (side: Side, anew = false) => {
    held.silence();
    const known = anew ? {} : taken;
    const other = known[otherSide(side)];
    const stands = levelled(instruments, other);
    const outcome = await heardOnce(instruments, ways, { side, stands }, setStep);
    const cup = cupIn(outcome, instruments.measurer.world().level);
    if (cup === undefined) return setStep(stepOf(outcome, side));
    setTaken({ ...known, [side]: cup });
    told(side, cup, other);
  };
  const anew = () => {
    setTaken({});
    setStep({ at: "hold", side: "left" });
  };
  const hold = (side: Side) => setStep({ at: "hold", side });
  return { step, taken, listen, anew, hold };
}

export type CupBout = ReturnType<typeof useCups>;
