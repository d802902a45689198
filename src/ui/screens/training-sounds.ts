import { useRef } from "preact/hooks";
import type { Version } from "#core/hearing/audition.ts";
import { earsAt } from "#core/rig/ears-at.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Question, Round } from "#core/training/round.ts";
import type { Sounding } from "#core/training/soundings.ts";
import { testProgramme } from "./test-programme.ts";
import { type Auditioning, type Comparison, useAudition } from "./use-audition.ts";
import type { Held } from "./use-page.ts";

/** What may be played of a question; never two of them at once. */
export interface QuestionSounds {
  /** What is asked, beside the healthy feed. */
  readonly asked: Auditioning;
  /** What it was taken for instead, beside the healthy feed. */
  readonly mistaken: Auditioning;
  /** What is heard now, and of which of the two; undefined while nothing plays. */
  readonly heard: readonly ["asked" | "mistaken", Version] | undefined;
}

/** @param taken the choice that was taken; nothing of it is worked out before it is to be heard */
export function useQuestionSounds(
  held: Held,
  round: Round,
  question: Question,
  taken: Sounding | undefined,
): QuestionSounds {
  const { player } = held.edges;
  // Not a state: a second press may come before the screen has been drawn anew.
  const turn = useRef<"asked" | "mistaken">("asked");
  const beside = (what: string, fault: RigFault | undefined): Comparison => ({
    key: `${round.seed} ${question.number} ${what}`,
    programme: () => testProgramme(player.rate(), question.number),
    chains: () => ({
      healthy: earsAt(round.rig, round.position, []),
      faulty: earsAt(round.rig, round.position, fault ? [fault] : []),
    }),
  });
  const asked = useAudition(held, beside("asked", question.fault));
  const mistaken = useAudition(held, beside("mistaken", taken?.faults[0]));
  const inTurn = (mine: "asked" | "mistaken", own: Auditioning, other: Auditioning) => ({
    ...own,
    hear: (version: Version) => {
      if (turn.current !== mine) {
        other.stop();
        player.silence();
        turn.current = mine;
      }
      own.hear(version);
    },
  });
  const { heard } = held.world;
  return {
    asked: inTurn("asked", asked, mistaken),
    mistaken: inTurn("mistaken", mistaken, asked),
    heard: heard && [turn.current, heard],
  };
}
