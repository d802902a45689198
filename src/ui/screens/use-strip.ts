import { useEffect, useState } from "preact/hooks";
import type { View } from "./page.ts";

/** What opens in place under the bar, by the id of its element. */
export const strips = { look: "look-strip", help: "help" } as const;
export type Strip = keyof typeof strips;

/** Which strip is open, and how its button opens and closes it. There is one at a time, until another screen comes or Escape is pressed. */
export function useStrip(
  view: View,
): readonly [open: Strip | undefined, press: (strip: Strip) => void] {
  const [at, setAt] = useState<{ readonly view: View; readonly strip: Strip }>();
  const open = at?.view === view ? at.strip : undefined;
  useEffect(() => {
    if (open === undefined) return;
    const down = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      // Besides silence it means this, and nothing that the screen beneath would leave by it.
      event.preventDefault();
      giveBack(strips[open]);
      setAt(undefined);
    };
    window.addEventListener("keydown", down, true);
    return () => window.removeEventListener("keydown", down, true);
  }, [open]);
  return [open, (strip) => setAt(open === strip ? undefined : { view, strip })];
}

/** The focus goes from within a strip to the button that opened it. */
function giveBack(id: string): void {
  if (document.getElementById(id)?.contains(document.activeElement))
    document.querySelector<HTMLElement>(`[aria-controls="${id}"]`)?.focus();
}
