import type { Page } from "playwright";
import { seeded } from "#core/units/random.ts";
import { onTheDisk } from "./disk.ts";
import { KilledBrowser, kill } from "./killed-browser.ts";
import { offered, pressNext } from "./presses.ts";
import { type Known, nothingKnown, type Press, seen } from "./what-is-left.ts";

/** What became of a number of kills. */
export interface Counts {
  kills: number;
  /** How many were before in other browsers, so that each begins with another kind. */
  readonly first: number;
  /** Of the whole browser. */
  whole: number;
  /** Right after the screen showed that a press was taken; the others at a moment by chance after the press. */
  acknowledged: number;
  /** Presses that were on the disk though the screen had not shown them yet. */
  early: number;
  /** Where it was pressed before a kill, as selectors. */
  readonly places: Set<string>;
  /** Everything that was not as it must be. */
  readonly wrong: string[];
}

/** Longer sessions are begun anew. */
const longest = 9;
/** A kill by chance comes within so many milliseconds of the press; most presses take less. */
const within = 50;
/** One of so many ends the whole browser. */
const wholeBrowser = 8;
/** In one of so many the last answer is taken back, where there is one. */
const takenBack = 3;
export const takesBack = "take the last answer back";

/** What is to be lived through. */
interface Asked {
  readonly url: string;
  readonly seed: number;
  readonly kills: number;
  /** The entries that are made before the first kill, each by what is pressed for it, or by chance: so that few kills come to every place of a round. */
  readonly ahead: readonly (string | undefined)[];
}

/** One life of the page after the other in one profile: presses, is killed, begins again, and sees what is left; so many times. */
export async function lives({ url, seed, kills, ahead }: Asked): Promise<Counts> {
  const draw = seeded(seed);
  const browser = await KilledBrowser.start();
  const counts: Counts = {
    kills: 0,
    first: seed * kills,
    whole: 0,
    acknowledged: 0,
    early: 0,
    places: new Set(),
    wrong: [],
  };
  let known: Known = nothingKnown;
  let press: Press | undefined;
  try {
    for (;;) {
      const page = await browser.page();
      await page.addInitScript(withoutCopy);
      await page.goto(url);
      const left = seen(known, press, await onTheDisk(page));
      counts.wrong.push(...left.wrong);
      counts.early += left.early;
      known = left.known;
      if (counts.kills === kills) return counts;
      if (counts.kills === 0 && ahead.length > 0)
        known = await goneAhead({ browser, page, known, draw, counts }, ahead);
      press = await oneLife({ browser, page, known, draw, counts });
    }
  } finally {
    await browser.close();
  }
}

/** A session with so many entries, made without a kill. */
async function goneAhead(life: Life, ahead: Asked["ahead"]): Promise<Known> {
  for (const [made, rather] of ahead.entries()) {
    const { how } = await toAnEntry(life, made === 0, rather);
    const pressed = await pressNext(life.page, how);
    if (pressed?.acknowledged !== true) life.counts.wrong.push("a press was never taken");
  }
  const disk = await onTheDisk(life.page);
  const [session, lie = []] = Object.entries(disk)[0] ?? [];
  if (lie.length !== ahead.length)
    life.counts.wrong.push(`${lie.length} of ${ahead.length} were written`);
  return { disk, session, entries: lie.length };
}

/** What is put away for flight mode is looked through at every beginning, and is not what is killed here. */
const withoutCopy = () => {
  Reflect.deleteProperty(Navigator.prototype, "serviceWorker");
};

interface Life {
  readonly browser: KilledBrowser;
  readonly page: Page;
  readonly known: Known;
  readonly draw: () => number;
  readonly counts: Counts;
}

/** From the first screen to one press that makes an entry, and the kill. */
async function oneLife(life: Life): Promise<Press> {
  const { known, counts } = life;
  const anew = known.entries === 0 || known.entries >= longest;
  const processes = await life.browser.pages();
  const back = (counts.first + counts.kills) % takenBack === 1 ? takesBack : undefined;
  const { how, place } = await toAnEntry(life, anew, back);
  counts.places.add(place);
  return { anew, place, acknowledged: await pressedAndKilled(life, how, processes) };
}

/** Presses what makes no entry, until something that does is offered. */
async function toAnEntry({ page, draw }: Life, anew: boolean, rather: string | undefined) {
  for (const late = Date.now() + 20_000; Date.now() < late; ) {
    const how = { anew, chance: draw(), rather };
    const there = await offered(page, how);
    if (there?.entry) return { how, place: there.place };
    if (there === undefined) await new Promise((resolve) => setTimeout(resolve, 15));
    else await pressNext(page, how);
  }
  throw new Error(`nothing to press: ${await page.locator("main").textContent()}`);
}

/** When a kill comes: at a moment by chance after the press, or once the screen has shown that it was taken; and what it ends. */
interface Kill {
  readonly whole: boolean;
  /** Milliseconds; undefined once it was shown. */
  readonly after: number | undefined;
}

/** In turn, so that few kills have all there are: each half of the time, and both of a whole browser as well. */
const killBy = (draw: () => number, { kills, first }: Counts): Kill => {
  const nth = first + kills;
  return {
    whole: nth % wholeBrowser === 0,
    after: nth % 2 === Math.floor(nth / wholeBrowser) % 2 ? undefined : draw() * within,
  };
};

/** Says whether the screen had shown that the press was taken, when the kill came. */
async function pressedAndKilled(
  { browser, page, draw, counts }: Life,
  how: Parameters<typeof pressNext>[1],
  processes: readonly number[],
): Promise<boolean> {
  const { whole, after } = killBy(draw, counts);
  let shown = false;
  const pressing = pressNext(page, how).then(
    (pressed) => {
      shown = pressed?.acknowledged === true;
    },
    () => undefined, // the page was killed meanwhile
  );
  if (after === undefined) await pressing;
  else await Promise.race([new Promise((resolve) => setTimeout(resolve, after)), pressing]);
  const acknowledged = shown;
  if (whole) await browser.killAll();
  else for (const id of processes) kill(id);
  counts.kills += 1;
  if (whole) counts.whole += 1;
  if (acknowledged) counts.acknowledged += 1;
  else if (after === undefined) counts.wrong.push("a press was never taken");
  if (!whole) await page.close();
  return acknowledged;
}
