import { useLayoutEffect } from "preact/hooks";
import { isWrittenIn } from "#ui/parts/keys.ts";

/** Ctrl+Z and Ctrl+Shift+Z, or with the Command key, but where somebody writes. */
export function useUndoKeys(step: (way: "undone" | "redone") => void): void {
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent) => {
      const way = wayOf(event);
      if (way === undefined || isWrittenIn(event.target)) return;
      event.preventDefault();
      step(way);
    };
    window.addEventListener("keydown", down);
    return () => window.removeEventListener("keydown", down);
  }, [step]);
}

function wayOf({ key, ctrlKey, metaKey, shiftKey }: KeyboardEvent) {
  const letter = ctrlKey || metaKey ? key.toLowerCase() : "";
  if (letter === "y" || (letter === "z" && shiftKey)) return "redone";
  return letter === "z" ? "undone" : undefined;
}
