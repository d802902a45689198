import type { Player } from "#audio/player.ts";
import { catalogue as earChecks } from "#core/checks/catalogue.ts";
import { derive } from "#core/session/derive.ts";
import { rigIn, type Said } from "#core/session/log.ts";
import { movedOn, wentBack } from "./moved-on.ts";
import { dropped, entered, type Page } from "./page.ts";
import { type Ready, useReady } from "./ready.ts";
import type { Held } from "./use-page.ts";

/** A session under way: what is held, what follows from it, and what a press may add. */
export interface Session extends Held {
  readonly ready: Ready | undefined;
  readonly enter: (...said: readonly Said[]) => void;
  readonly takeBack: () => void;
}

export function useSession(held: Held): Session {
  const { page, edges, change } = held;
  const { player, now } = edges;
  const ready = useReady(page, () => change((one) => dropped(one, now())));
  const go = (next: Page) => {
    player.silence();
    const { muted, turnedUp } = player.world();
    if (muted && !turnedUp && asksForSound(next)) player.handOff();
    // What was worked out from an older log, as by what took its time to measure, would take back what was entered since.
    change((one) => (one.log === page.log ? next : one));
  };
  return {
    ...held,
    ready,
    enter: (...said) =>
      go(
        movedOn(
          page,
          said.reduce((one, next) => entered(one, withLevel(next, page, player), now()), page),
        ),
      ),
    takeBack: () => go(wentBack(page, now())),
  };
}

/** An answer by ear with how loud the test signal was; without, where none was played or a microphone heard it. */
function withLevel(said: Said, { sounded, view }: Page, player: Player): Said {
  if (said.entry !== "finding" || !sounded) return said;
  const heard = byEar.has(said.finding.asked.check);
  const microphone = view.screen === "position" && view.microphone !== undefined;
  return heard && !microphone ? { ...said, level: player.world().level } : said;
}

const byEar: ReadonlySet<string> = new Set(earChecks.map(({ name }) => name));

/** Whether the position in hand needs no hand on the gear any more: then sound may be played again. */
function asksForSound(page: Page): boolean {
  const position = inHand(page);
  if (position === undefined) return false;
  const advice = derive(page.log)?.standing(position).advice;
  return advice?.advice === "ask"
    ? !["look", "twist"].includes(advice.option.asked.check)
    : advice?.advice === "healthy";
}

/** The position that is listened at. Where a lead is proved by ear, its rig has one. */
function inHand({ log, view }: Page): string | undefined {
  if (view.screen === "prove" && view.lead.by === "ear") return rigIn(log)?.positions[0]?.id;
  return view.screen === "position" ? view.position : undefined;
}
