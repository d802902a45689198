import { firstTurn, type Pass } from "./hands-up-state.ts";
import type { Page } from "./page.ts";
import type { Held } from "./use-page.ts";

interface PassInHand {
  readonly pass: Pass;
  readonly change: (how: (pass: Pass) => Pass) => void;
  /** The next one begins anew. */
  readonly drop: () => void;
}

/** The pass over all seats. The page holds it, so that whoever leaves it goes on where they were, as long as nothing was entered since. */
export function usePass({ page, change }: Held): PassInHand {
  const { log } = page;
  return {
    pass: passIn(page),
    change: (how) =>
      change((one) => (one.log === log ? { ...one, pass: { log, pass: how(passIn(one)) } } : one)),
    drop: () => change((one) => ({ ...one, pass: undefined })),
  };
}

const passIn = ({ log, pass }: Page): Pass => (pass?.log === log ? pass.pass : firstTurn);
