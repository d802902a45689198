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
  /** What is pressed rather than anything else, where it is offered: what stands on a button, or the place on the head that it is. */
  readonly rather?: string | undefined;
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
  rather,
  looks,
}: How & { readonly looks: boolean }): Promise<Pressed | undefined> {
  const all = (selector: string) => [...document.querySelectorAll<HTMLElement>(selector)];
  const main = () => document.querySelector("main")?.textContent ?? "";
  // With every entry a screen, or the answer that was last, is another; all else on it may change by itself.
  const heading = () => document.querySelector("main h1");
  const last = () => document.querySelector("main .last span")?.textContent;
  const changedFrom = (was: Element | null, said: string | undefined) =>
    heading() !== null && (heading() !== was || last() !== said);
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
  const wished = all("main button").find(
    (one) => rather !== undefined && (one.textContent === rather || one.dataset.place === rather),
  );
  const [place = "", choice] =
    wished === undefined || document.querySelector(".page.playing") !== null
      ? (ways.find(([selector]) => document.querySelector(selector)) ?? [])
      : [rather, (): Choice => [wished, true]];
  const [button, entry] = choice?.() ?? [undefined, false];
  if (button === undefined) return Promise.resolve(undefined);
  if (looks) return Promise.resolve({ entry, place, acknowledged: false });
  const [before, headingBefore, lastBefore] = [main(), heading(), last()];
  return new Promise((resolve) => {
    const late = setTimeout(() => resolve({ entry, place, acknowledged: false }), 5000);
    const watch = new MutationObserver(() => {
      if (entry ? !changedFrom(headingBefore, lastBefore) : main() === before) return;
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
