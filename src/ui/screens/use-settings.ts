import { useLayoutEffect, useRef } from "preact/hooks";
import type { Settings, SettingsStore, Theme } from "#storage/settings.ts";
import { firstWords } from "#ui/words/first-words.ts";

/** Keeps what was chosen for the page, and has the document show it: its language with the way it is written, and the theme by name. */
export function useSettings(settings: Settings, store: SettingsStore): void {
  const { theme, tongue } = settings;
  const before = useRef(settings);
  useLayoutEffect(() => {
    const chosen = changedIn(before.current, settings);
    before.current = settings;
    if (Object.keys(chosen).length > 0) store.keep(chosen);
  }, [settings, store]);
  useLayoutEffect(() => {
    const { documentElement } = document;
    documentElement.lang = tongue;
    documentElement.dir = firstWords[tongue].direction;
  }, [tongue]);
  useLayoutEffect(() => {
    const light = matchMedia("(prefers-color-scheme: light)");
    const show = () => showTheme(theme === "as the system" ? bySystem(light) : theme);
    show();
    light.addEventListener("change", show);
    return () => light.removeEventListener("change", show);
  }, [theme]);
}

/** What is another than before. */
const changedIn = (before: Settings, now: Settings): Partial<Settings> =>
  Object.fromEntries(
    Object.entries(now).filter(([name, value]) => before[name as keyof Settings] !== value),
  );

const bySystem = ({ matches }: MediaQueryList): Theme => (matches ? "light" : "dark");

/** The same as the short script in index.html does before anything is drawn; and the browser's own bar takes the colour of the ground. */
function showTheme(theme: Theme): void {
  const { documentElement: root } = document;
  root.dataset.theme = theme;
  const ground = getComputedStyle(root).getPropertyValue("--ground");
  document.querySelector("meta[name='theme-color']")?.setAttribute("content", ground);
}
