import { earCheck } from "#core/checks/catalogue.ts";
import { earChecks } from "#core/checks/check.ts";
import type { Asked } from "#core/checks/finding.ts";
import { twistAnswers } from "#core/checks/twist.ts";
import { straightIn } from "#core/rig/rigs.ts";
import { type Derived, derive } from "#core/session/derive.ts";
import { lastToTake } from "#core/session/log.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { createDatabase } from "#storage/database.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createStore } from "#storage/store.ts";
import { createTurns } from "#storage/turns.ts";
import { Keeper } from "#ui/screens/keeper.ts";
import type { Shown } from "#ui/screens/keeping.ts";
import { begun, entered, firstPage, type Page, tookBack } from "#ui/screens/page.ts";

/*
 * A round without its screens: the page's own keeper over the browser's own database, pressed by somebody who answers anything. What is shown is told; it
 * goes on until it is killed.
 */

/** What it is told to begin with. */
export interface Going {
  readonly database: string;
  readonly seed: number;
}

/** What it tells: the step that was shown, and the whole session as it is shown then, as text. */
export interface Stepped {
  readonly step: string;
  readonly session: string;
  readonly log: string;
  /** All of it is on the disk, as far as the page knows; where the disk is late it is shown before, with a word of that. */
  readonly kept: boolean;
}

let time = 0;
const now = () => ++time;

/** What a press makes of the page, and what kind of step that is. */
type Press = readonly [step: string, page: Page];

function pressed(page: Page, random: Random): Press {
  const derived = derive(page.log);
  if (derived === undefined) return begins(page);
  if (lastToTake(page.log) !== undefined && random() < 0.12)
    return ["take back", tookBack(page, now())];
  const open = derived.rig.positions.find(
    ({ id }) => !["healthy", "absent"].includes(derived.state(id)),
  );
  return open === undefined ? begins(page) : goesOn(page, derived, open.id, random);
}

/** A small rig, since each life works its model out anew. */
const begins = (page: Page): Press => ["begin", begun(page, straightIn, undefined, now())];

function goesOn(page: Page, derived: Derived, position: string, random: Random): Press {
  const { advice } = derived.standing(position);
  if (advice.advice === "ask" && advice.option.asked.check !== "matrix") {
    const { asked } = advice.option;
    const results = answersIn(derived, asked).map((all) => [one(all, random)]);
    const finding = { asked, results };
    return [asked.check, entered(page, { entry: "finding", finding, level: -50 }, now())];
  }
  if (advice.advice !== "do")
    return ["absent", entered(page, { entry: "absent", position }, now())];
  const entry = random() < 0.6 ? "move" : "cannot";
  return [entry, entered(page, { entry, move: advice.move }, now())];
}

/** The closed lists of what is asked. */
function answersIn({ model }: Derived, asked: Asked): readonly (readonly string[])[] {
  if (asked.check === "look")
    return [model.looks.find(({ place }) => place === asked.place)?.answers ?? []];
  if (asked.check === "twist") return [twistAnswers];
  const check = earChecks.find((name) => name === asked.check);
  return check === undefined ? [] : earCheck(check).questions.map(({ answers }) => answers);
}

const one = (all: readonly string[], random: Random): string =>
  all[Math.floor(random() * all.length)] ?? "";

function goes({ database, seed }: Going, tell: (told: Stepped) => void): void {
  const random = seeded(seed);
  const store = createStore({
    shelf: createDatabase(database),
    turns: createTurns(),
    older: () => createMemoryStorage(),
    now,
    name: () => `${seed}-${now()}`,
  });
  const keeper = new Keeper(store, firstPage({ theme: "dark", tongue: "en", numbers: false }), now);
  let step = "open";
  let before = "";
  const press = () => {
    keeper.change((page) => {
      const [kind, next] = pressed(page, random);
      step = kind;
      return next;
    });
  };
  keeper.start(({ page, keeping }: Shown) => {
    const log = JSON.stringify(page.log);
    const told: Stepped = { step, session: keeping.session ?? "", log, kept: keeping.kept };
    const text = JSON.stringify(told);
    if (text === before) return;
    before = text;
    tell(told);
    if (keeping.kept) setTimeout(press);
  });
  // Where nothing was kept yet, nothing new is shown.
  setTimeout(press, 30);
}

addEventListener(
  "message",
  ({ data, ports: [port] }: MessageEvent<Going>) => goes(data, (told) => port?.postMessage(told)),
  { once: true },
);
postMessage("ready");
