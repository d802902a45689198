import { useEffect } from "preact/hooks";
import type { Settings, SettingsStore } from "#storage/settings.ts";
import { firstWords } from "#ui/words/first-words.ts";

/** Keeps what was chosen for the page, and has the document show it: its language with the way it is written, and the theme by name. */
export function useSettings(settings: Settings, store: SettingsStore): void {
  useEffect(() => {
    const { documentElement } = document;
    documentElement.lang = settings.tongue;
    documentElement.dir = firstWords[settings.tongue].direction;
    documentElement.dataset.theme = settings.theme;
    store.keep(settings);
  }, [settings, store]);
}
