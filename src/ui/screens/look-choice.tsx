import type { Settings, Theme, Tongue } from "#storage/settings.ts";
import { Swatch } from "#ui/parts/swatch.tsx";
import { useFirstWords } from "#ui/words/use-words.ts";
import { Own } from "./own-copy.tsx";
import type { Held } from "./use-page.ts";
import { strips } from "./use-strip.ts";

const themes: readonly Theme[] = ["as the system", "dark", "light", "red lamp"];

/** Languages call themselves what they are called by those who speak them. */
const tongues: Readonly<Record<Tongue, string>> = { en: "English", de: "Deutsch" };

interface Props {
  readonly held: Held;
  readonly open: boolean;
  readonly onPress: () => void;
}

/** How the page looks and which language it speaks: a quiet button in the frame, and a strip that it opens in place. */
export function LookChoice({ held, open, onPress }: Props) {
  const words = useFirstWords();
  return (
    <>
      <button
        type="button"
        class="look-button"
        aria-expanded={open}
        aria-controls={strips.look}
        title={words.look.title}
        onClick={onPress}
      >
        <Swatch />
        <span class="hidden">{words.look.title}: </span>
        <span class="key">{held.page.settings.tongue}</span>
      </button>
      {open && <Strip held={held} />}
    </>
  );
}

function Strip({ held: { page, change, edges } }: { readonly held: Held }) {
  const { look } = useFirstWords();
  const set = (some: Partial<Settings>) =>
    change((one) => ({ ...one, settings: { ...one.settings, ...some } }));
  return (
    <section class="look-strip" id={strips.look} aria-label={look.title}>
      <fieldset>
        <legend>{look.themes}</legend>
        {themes.map((theme) => (
          <button
            key={theme}
            type="button"
            class="swatch-button"
            aria-pressed={page.settings.theme === theme}
            onClick={() => set({ theme })}
          >
            <Swatch theme={theme} />
            {look.theme[theme]}
          </button>
        ))}
      </fieldset>
      <fieldset>
        <legend>{look.language}</legend>
        {Object.entries(tongues).map(([tongue, name]) => (
          <button
            key={tongue}
            type="button"
            class="swatch-button"
            lang={tongue}
            aria-pressed={page.settings.tongue === tongue}
            onClick={() => set({ tongue: tongue as Tongue })}
          >
            {name}
          </button>
        ))}
      </fieldset>
      <Own copy={edges.copy} />
    </section>
  );
}
