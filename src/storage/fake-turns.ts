import type { Claim, Turns } from "./turns.ts";

type Wish = (mine: boolean) => void;

/** A fake of the browser's locks and its channel: every `tab()` is one more tab at the same place. */
export function createFakeTurns(): { readonly tab: () => Turns } {
  const wishes = new Map<string, Wish[]>();
  const listeners = new Set<(session: string) => void>();
  const first = (session: string, wish: Wish): void => {
    const others = (wishes.get(session) ?? []).filter((one) => one !== wish);
    wishes.set(session, [wish, ...others]);
    others[0]?.(false);
    wish(true);
  };
  const claim = (session: string, wish: Wish): Claim => {
    const row = wishes.get(session) ?? [];
    wishes.set(session, [...row, wish]);
    queueMicrotask(() => wish(wishes.get(session)?.[0] === wish));
    return {
      take: () => first(session, wish),
      give: () => {
        const [had, ...rest] = wishes.get(session) ?? [];
        wishes.set(
          session,
          had === wish ? rest : ([had, ...rest].filter((one) => one !== wish) as Wish[]),
        );
        if (had === wish) rest[0]?.(true);
      },
    };
  };
  return {
    tab: () => {
      const own = new Set<(session: string) => void>();
      return {
        claim,
        tell: (session) => {
          for (const listener of listeners) if (!own.has(listener)) listener(session);
        },
        hear: (listener) => {
          own.add(listener);
          listeners.add(listener);
          return () => void listeners.delete(listener);
        },
      };
    },
  };
}
