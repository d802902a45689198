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
  useLetters((key) => {
    if (key === "n") toggle();
  });
  return (
    <div class="numbers-here">
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
