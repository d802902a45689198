import type { Copy, CopyState } from "./copy.ts";

/** A copy that is as it is told, and notes what was asked of it. */
export interface FakeCopy extends Copy {
  readonly asked: readonly ("newer" | "install")[];
  readonly change: (some: Partial<CopyState>) => void;
}

export function createFakeCopy(): FakeCopy {
  let state: CopyState = { kept: false, newer: false, installable: false };
  const listeners = new Set<() => void>();
  const asked: ("newer" | "install")[] = [];
  return {
    asked,
    world: () => state,
    change: (some) => {
      state = { ...state, ...some };
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    takeNewer: () => void asked.push("newer"),
    install: () => void asked.push("install"),
  };
}
