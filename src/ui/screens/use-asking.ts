import { type AskedByEar, type AskState, beforePlaying } from "./ask-state.ts";
import type { Page } from "./page.ts";
import type { Held } from "./use-page.ts";

type Change = (how: (state: AskState) => AskState) => void;

/** How far a check by ear has come. The page holds it, so that whoever looks something up meanwhile goes on where they were. */
export function useAsking({ page, change }: Held, asked: AskedByEar): [AskState, Change] {
  const { log } = page;
  const set: Change = (how) =>
    change((one) =>
      // What was still to come of a sound when its question was answered changes nothing.
      one.log === log ? { ...one, asking: { log, asked, state: how(stateOf(one, asked)) } } : one,
    );
  return [stateOf(page, asked), set];
}

/** As far as it came, where nothing was entered since. */
const stateOf = ({ log, asking }: Page, { check, position }: AskedByEar): AskState =>
  asking?.log === log && asking.asked.check === check && asking.asked.position === position
    ? asking.state
    : beforePlaying;
