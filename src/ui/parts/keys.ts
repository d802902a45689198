import { useEffect, useLayoutEffect } from "preact/hooks";

/**
 * Space means nothing here but in a text, and a key held down presses once: an elbow on a keyboard must not answer. Enter ticks what Space would. Esc silences
 * from everywhere.
 */
export function useKeys(onEscape: () => void): void {
  useEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (event.key === "Escape") onEscape();
      tick(event);
      if (isElbow(event) || (event.key === "Enter" && event.repeat)) event.preventDefault();
    };
    const up = (event: KeyboardEvent) => {
      if (isElbow(event)) event.preventDefault();
    };
    window.addEventListener("keydown", down, true);
    window.addEventListener("keyup", up, true);
    return () => {
      window.removeEventListener("keydown", down, true);
      window.removeEventListener("keyup", up, true);
    };
  }, [onEscape]);
}

/** Space, but where it is a letter of a text. */
const isElbow = ({ key, target }: KeyboardEvent): boolean => key === " " && !isWrittenIn(target);

/** What takes letters; all other kinds of input are pressed or pushed. */
const written: readonly string[] = ["text", "search", "number"];

/** Whether somebody writes there. */
export const isWrittenIn = (target: EventTarget | null): boolean =>
  target instanceof HTMLInputElement && written.includes(target.type);

function tick({ key, repeat, target }: KeyboardEvent): void {
  if (key !== "Enter" || repeat || !(target instanceof HTMLInputElement)) return;
  if (target.type === "checkbox") target.click();
}

/** Keys that mean something wherever the focus is, but where somebody writes, with a modifier, or held down. */
export function useLetters(onKey: (key: string) => void): void {
  // Before the next key can come, which belongs to what is drawn now.
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
      if (isWrittenIn(event.target)) return;
      onKey(event.key.toLowerCase());
    };
    window.addEventListener("keydown", down);
    return () => window.removeEventListener("keydown", down);
  }, [onKey]);
}
