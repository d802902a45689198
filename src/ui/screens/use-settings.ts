import { useEffect } from "preact/hooks";
import type { Settings, SettingsStore } from "#storage/settings.ts";

/** Keeps what was chosen for the page, and has the document show it: its language, and the theme by name. */
export function useSettings(settings: Settings, store: SettingsStore): void {
  useEffect(() => {
    const { documentElement } = document;
    documentElement.lang = settings.tongue;
    documentElement.dataset.theme = settings.theme;
    store.keep(settings);
  }, [settings, store]);
}
