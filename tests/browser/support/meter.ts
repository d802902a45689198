import { expect } from "vitest";
import { page as tab } from "vitest/browser";
import { earCheck } from "#core/checks/catalogue.ts";
import type { EarCheckName } from "#core/checks/check.ts";
import { showsOpen } from "#core/diagnosis/continuity.ts";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Method } from "#core/proving/choice.ts";
import { leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { isLoose, meterView } from "#core/proving/meter-view.ts";
import type { NextReading } from "#core/proving/next-reading.ts";
import { proofOf } from "#core/proving/proof.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import { build } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { leadIn } from "#ui/screens/prove-said.ts";
import { button, heading, keys, open, press } from "./open.tsx";

type Opened = ReturnType<typeof open>;

/** Goes on with a session in which a lead is proved, before its first reading. */
export async function proving(kind: PartKind, by: Method): Promise<Opened> {
  const log = add([], { entry: "drawing", rig: leadRig({ kind, by }) }, 0);
  const shelf = createMemoryShelf();
  shelf.lay("kept", log);
  const opened = open({ shelf });
  await press("Go on with the last session");
  return opened;
}

/** A lead of a kind with one fault, by its id, or with none. */
export interface Planted {
  readonly kind: PartKind;
  readonly fault?: string;
}

/** What the page asks for now, as the core has it. */
export function readingNow(opened: Opened): NextReading | undefined {
  const derived = derive(opened.log());
  const by = derived && leadIn(derived.rig)?.by;
  const next = derived && by && proofOf(derived, by).next;
  return next?.next === "read" ? next.reading : undefined;
}

/** Somebody who hears a lead with a fault between good gear, and answers what is likeliest. */
export function leadListener(kind: PartKind, fault: string) {
  const rig = build(leadRig({ kind, by: "ear" }));
  const hidden = rigFaults(rig).find(({ id }) => id === fault);
  if (hidden === undefined) throw new Error(`a ${kind} has no ${fault}`);
  const [now, healthy] = [behaviourAt(rig, provedAt, [hidden]), behaviourAt(rig, provedAt, [])];
  return {
    hidden,
    positionOf: () => provedAt,
    answers: (check: EarCheckName) =>
      earCheck(check).questions.map(({ answers, predict }) => {
        const chances = predict(now, healthy);
        return answers[chances.indexOf(Math.max(...chances))] ?? "";
      }),
  };
}

/** What a meter shows on a planted lead, as it is pointed at. */
function pointed({ kind, fault }: Planted, { asked, bend }: NextReading): string | RegExp | number {
  const rig = build(leadRig({ kind, by: "meter" }));
  const faults: readonly RigFault[] = rigFaults(rig).filter(({ id }) => id === fault);
  const shown = meterView(rig).shown(faults, asked);
  const [ohms = 0] = shown;
  if (bend && isLoose(shown)) return /^it changes/;
  if (showsOpen(ohms)) return /^no beep/;
  return ohms < 1 ? /^beep/ : ohms;
}

/** Presses what the meter would show, or types it; until the page has a result. How many readings that took. */
export async function meterAll(opened: Opened, planted: Planted): Promise<number> {
  for (let count = 0; count < 20; count++) {
    if (document.querySelector(".proved") !== null) return count;
    await expect.element(button(/^no beep/)).toBeVisible();
    await expect.element(heading()).toHaveFocus();
    const reading = readingNow(opened);
    if (reading === undefined) throw new Error("nothing is asked for");
    const before = opened.log().length;
    const what = pointed(planted, reading);
    if (typeof what === "number") {
      await tab.getByLabelText(/as it reads/).fill(what.toFixed(1));
      await keys("{Enter}");
    } else await enter(what);
    await expect.poll(() => opened.log().length).toBeGreaterThan(before);
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error("twenty readings were not enough");
}

/** Presses by key: a screen that has just come takes no press of a mouse for a moment. */
async function enter(name: string | RegExp): Promise<void> {
  button(name).element().focus();
  await keys("{Enter}");
}
