import { useEffect, useRef } from "preact/hooks";
import type { Derived } from "#core/session/derive.ts";
import { useLetters } from "#ui/parts/keys.ts";
import { useWords } from "#ui/words/use-words.ts";
import { useFetched } from "./use-fetched.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly derived: Derived;
  readonly position: string;
}

/** Opens and closes the strip of numbers, by a press or by its key; whoever wants it has it from then on. */
export function NumbersHere({ held, derived, position }: Props) {
  const { numbers } = useWords();
  const { settings } = held.page;
  const open = settings.numbers;
  const strip = useFetched(open, () => import("./numbers-strip.tsx"), held.change);
  const toggle = () =>
    held.change((one) => ({ ...one, settings: { ...one.settings, numbers: !open } }));
  const here = useRef<HTMLDivElement>(null);
  const byKey = useRef(false);
  useLetters((key) => {
    if (key !== "n") return;
    byKey.current = !open;
    if (!open) here.current?.querySelector("button")?.focus({ preventScroll: true });
    toggle();
  });
  // A key is pressed wherever one reads, which may be a window above.
  useEffect(() => {
    if (strip === undefined || !open || !byKey.current) return;
    byKey.current = false;
    here.current?.scrollIntoView({ block: "nearest", behavior: "instant" });
  }, [strip, open]);
  return (
    <div class="numbers-here" ref={here}>
      <button
        type="button"
        class="quiet"
        aria-expanded={open}
        aria-keyshortcuts="n"
        onClick={toggle}
      >
        {numbers.open}
        <span class="key" aria-hidden="true">
          n
        </span>
      </button>
      {open && strip && <strip.NumbersStrip derived={derived} position={position} />}
    </div>
  );
}
