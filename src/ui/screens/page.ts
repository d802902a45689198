import type { Device } from "#audio/route.ts";
import type { FlexReturn } from "#core/measurement/flex-names.ts";
import type { Rig } from "#core/rig/rig.ts";
import { add, type Log, lastDrawing, lastToTake, rigIn, type Said } from "#core/session/log.ts";
import type { Answered } from "#core/training/score.ts";
import type { Settings } from "#storage/settings.ts";
import type { Notice } from "#ui/words/notice.ts";
import type { Told } from "./complaint-told.ts";
import type { LevelsView } from "./levels-view.ts";
import type { NoiseView } from "./noise-view.ts";
import type { Plan } from "./plan.ts";
import { type LeadSaid, leadIn } from "./prove-said.ts";
import type { RigView } from "./rig-view.ts";
import type { SheetView } from "./sheet-view.ts";

export type View =
  | { readonly screen: "start" }
  | {
      readonly screen: "board";
      /** The position that was left by itself, since it was found healthy. */
      readonly came?: string;
    }
  | RigView
  | LevelsView
  | NoiseView
  | {
      readonly screen: "position";
      readonly position: string;
      /** The position whose cups are held to a microphone meanwhile. */
      readonly microphone?: string;
      /** The position that was left by itself, since it was found healthy. */
      readonly came?: string;
    }
  /** One pass over all seats that are not heard yet. */
  | { readonly screen: "hands up" }
  | { readonly screen: "curtain" }
  /** What somebody has and wants, before it is plugged in; left out, what most people stand before. */
  | { readonly screen: "plan"; readonly plan?: Plan }
  /** What faults of a rig sound like at its first position: the one chosen, by id, or the rig as it is. */
  | {
      readonly screen: "listen";
      readonly rig: Rig;
      readonly place?: string | undefined;
      readonly fault?: string | undefined;
      /** The plan it was come from. */
      readonly plan?: Plan;
    }
  | SheetView
  /** The words of the trade; one of them to stand at, and where one came from. */
  | { readonly screen: "words"; readonly word?: string; readonly from?: View }
  /** One complaint, as far as it was told. */
  | { readonly screen: "complaint"; readonly told: Told }
  /** Which output plays; and where one came from. */
  | { readonly screen: "sound out"; readonly from: View }
  /** A lead to be proved, as far as it was said. */
  | { readonly screen: "prove"; readonly lead: LeadSaid }
  /** Every test sound, to be played by hand or taken away. */
  | { readonly screen: "sounds" }
  /** A lead watched while it is bent. */
  | { readonly screen: "flex" }
  /** Every session that is kept. */
  | {
      readonly screen: "sessions";
      /** The one that is compared; with it, once chosen, the one that it is compared with. */
      readonly compare?: readonly [now: string, then?: string];
    }
  /** Something measured with a sound card, or out of a recording. */
  | { readonly screen: "measure" }
  /** The ear-training round that the page holds. */
  | { readonly screen: "training" };

/** An ear-training round so far: its seed, what was answered, and the answer to the question in hand once it is given. */
export interface RoundSoFar {
  readonly seed: number;
  readonly answered: readonly Answered[];
  readonly given?: string | undefined;
}

/** Who answers: whoever has the page in hand and wears them; or they point, to somebody who faces them or stands behind them. */
export const answersBy = ["wearing", "facing", "behind"] as const;
export type AnswersBy = (typeof answersBy)[number];

/** How something is hooked up to be measured; out of which output it is fed the measurer knows. */
export interface Ways {
  /** Left out: whatever the system records from. */
  readonly input?: Device | undefined;
  /** What stands at the far end: the inputs alone, or a load box before them. */
  readonly returns: FlexReturn;
}

/** Everything the page holds. All else is derived from it. */
export interface Page {
  readonly log: Log;
  /** The number of the bench rig; undefined for real gear. */
  readonly seed: number | undefined;
  readonly view: View;
  /** Who answers, and where they are seen from. */
  readonly answering: AnswersBy;
  /** The position whose listener was told last to point where they hear it. */
  readonly told?: string | undefined;
  /** Something was played since the page was opened. */
  readonly sounded: boolean;
  readonly notice: Notice | undefined;
  /** How the page looks and which language it speaks. */
  readonly settings: Settings;
  /** Whoever comes back to it goes on where they left it; it is not kept when the page is closed. */
  readonly training?: RoundSoFar;
  /** How what is measured was hooked up last. */
  readonly ways?: Ways;
  /** Which microphone heard the cups last. */
  readonly cupWays?: Ways;
}

/** Before anything that was kept is read. */
export const firstPage = (settings: Settings): Page => ({
  log: [],
  seed: undefined,
  view: { screen: "start" },
  answering: "wearing",
  sounded: false,
  notice: undefined,
  settings,
});

/** A session of a rig, from its beginning. */
export const begun = (page: Page, rig: Rig, seed: number | undefined, at: number): Page => ({
  ...begunWith(page, [{ entry: "drawing", rig }], at, seed),
  view: { screen: "board" },
});

/** A new session that begins with more than its rig. */
export function begunWith(page: Page, said: readonly Said[], at: number, seed?: number): Page {
  const log = said.reduce<Log>((before, one) => add(before, one, at), []);
  return { ...among(page, goneOnWith(log)), log, seed };
}

/** A session that is kept, to be gone on with. */
export const opened =
  (view: View) =>
  (page: Page): Page =>
    among(page, view);

/** Who sits in another session nobody said yet, and nobody there was told anything. */
const among = (page: Page, view: View): Page => ({
  ...page,
  view,
  answering: "wearing",
  told: undefined,
  notice: undefined,
});

/** Who answers: with a rig that is simulated whoever has the page in hand. */
export const answererIn = ({ seed, answering }: Page): AnswersBy =>
  seed === undefined ? answering : "wearing";

/** No session in hand. */
export const without = (page: Page): Page => ({ ...page, log: [], seed: undefined });

export const entered = (page: Page, said: Said, at: number): Page => ({
  ...page,
  log: add(page.log, said, at),
});

/** The last answer or move taken back, where there is one. */
export function tookBack(page: Page, at: number): Page {
  const last = lastToTake(page.log);
  return last === undefined ? page : entered(page, { entry: "taken back", taken: last.id }, at);
}

/** A kept session that could not be understood after all; a rig that was only just drawn so is taken back alone. */
export function dropped(page: Page, at: number): Page {
  const last = lastDrawing(page.log);
  if (last === undefined) return nothingKept(page);
  return {
    ...entered(page, { entry: "taken back", taken: last.id }, at),
    notice: "not worked out",
  };
}

const nothingKept = (page: Page): Page => ({
  ...page,
  log: [],
  seed: undefined,
  view: { screen: "start" },
  notice: "dropped",
});

/** Where a session of a rig goes on: at the position that was in hand, else at its board, or on the bench where it proves a lead. */
export function goingOn(rig: Rig, position?: string): View {
  const lead = leadIn(rig);
  if (lead !== undefined) return { screen: "prove", lead };
  const there = rig.positions.find(({ id }) => id === position);
  return there === undefined ? { screen: "board" } : { screen: "position", position: there.id };
}

/** The same, of a log; the first screen where it has no rig. */
export function goneOnWith(log: Log, position?: string): View {
  const rig = rigIn(log);
  return rig === undefined ? { screen: "start" } : goingOn(rig, position);
}
