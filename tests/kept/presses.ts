import type { Page } from "playwright";

/** What a press did. */
export interface Pressed {
  /** It was one that makes an entry. */
  readonly entry: boolean;
  /** Where it was pressed, as a selector. */
  readonly place: string;
  /** The screen showed that it was taken. */
  readonly acknowledged: boolean;
}

/** How to press. */
interface How {
  /** Begins another session where the first screen stands; else goes on. */
  readonly anew: boolean;
  /** Which of several, from zero to one. */
  readonly chance: number;
}

/** What the screen offers, and whether that makes an entry; undefined while it offers nothing. */
export const offered = (page: Page, how: How): Promise<Pressed | undefined> =>
  page.evaluate(pressing, { ...how, looks: true });

/** Presses what the screen offers, by chance where it is a choice, and waits until it shows something else. */
export const pressNext = (page: Page, how: How): Promise<Pressed | undefined> =>
  page.evaluate(pressing, { ...how, looks: false });

/** Runs in the page. */
function pressing({
  anew,
  chance,
  looks,
}: How & { readonly looks: boolean }): Promise<Pressed | undefined> {
  const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
  const main = () => document.querySelector("main")?.textContent ?? "";
  const named = (text: string) => all("main button").find((one) => one.textContent === text);
  const some = (of: readonly HTMLElement[]) => of[Math.floor(chance * of.length)];
  type Choice = readonly [button: HTMLElement | undefined, entry: boolean];
  const ways: readonly (readonly [selector: string, choice: () => Choice])[] = [
    // It plays on until it is answered.
    ["main .balance .step", () => [some(all("main .balance :is(.main, .step)")), true]],
    [".page.playing", () => [undefined, false]],
    [
      "main > .start",
      () => (anew ? [named("One person"), true] : [named("Go on with the last session"), false]),
    ],
    ["main button.seat", () => [all("main button.seat")[0], false]],
    ["main button.play:not(.again)", () => [all("main button.play")[0], false]],
    [
      "main .ask",
      () => [
        some(all("main .spot, main .says .say:not([aria-pressed])")),
        document.querySelector("h1")?.textContent !== "Where was the first?",
      ],
    ],
    ["main .look .sight", () => [some(all("main .look .sight")), true]],
    ["main .do .main, main .verdict .main", () => [all("main .main")[0], true]],
    ["main", () => [named("take the last answer back"), true]],
  ];
  const [place = "", choice] = ways.find(([selector]) => document.querySelector(selector)) ?? [];
  const [button, entry] = choice?.() ?? [undefined, false];
  if (button === undefined) return Promise.resolve(undefined);
  if (looks) return Promise.resolve({ entry, place, acknowledged: false });
  const before = main();
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve({ entry, place, acknowledged: false }), 5000);
    const watch = new MutationObserver(() => {
      if (main() === before || main() === "") return;
      // It says that it is not kept yet.
      if (document.querySelector("main [role=alert]") !== null) return;
      clearTimeout(late);
      watch.disconnect();
      resolve({ entry, place, acknowledged: true });
    });
    watch.observe(document.body, { subtree: true, childList: true, characterData: true });
    button.click();
  });
}
