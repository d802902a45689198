import { useState } from "preact/hooks";
import { type AskedByEar, type AskState, beforePlaying } from "./ask-state.ts";
import type { Page } from "./page.ts";
import type { Held } from "./use-page.ts";

type Change = (how: (state: AskState) => AskState) => void;

/**
 * How far a check by ear has come. The page holds it, so that whoever looks something up between two questions goes on where they were;
 * who had answered none hears it anew.
 */
export function useAsking({ page, change }: Held, asked: AskedByEar): [AskState, Change] {
  const { log } = page;
  const [atArrival] = useState(() => stateOf(page, asked));
  const now = (one: Page): AskState => {
    const state = stateOf(one, asked);
    return state === atArrival && !isAnswered(state) ? beforePlaying : state;
  };
  const set: Change = (how) =>
    change((one) =>
      // What was still to come of a sound when its question was answered changes nothing.
      one.log === log ? { ...one, asking: { log, asked, state: how(now(one)) } } : one,
    );
  return [now(page), set];
}

/** As far as it came, where nothing was entered since. */
const stateOf = ({ log, asking }: Page, { check, position }: AskedByEar): AskState =>
  asking?.log === log && asking.asked.check === check && asking.asked.position === position
    ? asking.state
    : beforePlaying;

const isAnswered = ({ given, first }: AskState): boolean => given.length > 0 || first !== undefined;
