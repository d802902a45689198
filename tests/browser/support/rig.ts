import { expect } from "vitest";
import { page as tab, userEvent } from "vitest/browser";
import type { Rig } from "#core/rig/rig.ts";
import { type StartKey, startKeys } from "#core/rig/start-words.ts";
import { starts } from "#core/rig/starts.ts";
import { add, holding, type Log } from "#core/session/log.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { board } from "#ui/words/english/board.ts";
import { first } from "#ui/words/english/first.ts";
import { rig as rigWords } from "#ui/words/english/rig.ts";
import { starts as words } from "#ui/words/english/starts.ts";
import { board as germanBoard } from "#ui/words/german/board.ts";
import { first as germanFirst } from "#ui/words/german/first.ts";
import { rig as germanRig } from "#ui/words/german/rig.ts";
import { heading, keys, open, press } from "./open.tsx";

export function startOf(key: StartKey): Rig {
  const rig = starts[startKeys.indexOf(key)]?.make(words);
  if (rig === undefined) throw new Error(`there is no start ${key}`);
  return rig;
}

const spoken = {
  en: [first.start.goOn, board.theRig, rigWords.heading],
  de: [germanFirst.start.goOn, germanBoard.theRig, germanRig.heading],
} as const;

/** Goes on with a session of a rig, and to its picture. */
export async function openRig(rig: Rig, language: keyof typeof spoken = "en") {
  const log = add([], { entry: "drawing", rig }, 0);
  const texts = { "leftwright.log": JSON.stringify(log) };
  const opened = open({ storage: createMemoryStorage({ texts }), tongues: [language] });
  const [goOn, theRig, title] = spoken[language];
  await press(goOn);
  await press(theRig);
  await expect.element(heading()).toHaveTextContent(title);
  await expect.poll(() => document.querySelector(".rig-picture")).not.toBeNull();
  return opened;
}

/** The rig as a log draws it. */
export function drawnIn(log: Log): Rig {
  const drawing = holding(log).findLast(({ entry }) => entry === "drawing");
  if (drawing?.entry !== "drawing") throw new Error("nothing is drawn");
  return drawing.rig;
}

/** What is worn where, by tape and socket. */
export const seatsIn = ({ positions, plugged }: Rig): readonly string[] =>
  positions.map(({ name, wears }) => {
    const end = plugged.find(({ part }) => part === wears);
    return `${name}: ${end?.into}, ${end?.socket}`;
  });

/** A thing of the picture, or of what may be added, by its name. */
export const thing = (name: string | RegExp) => tab.getByRole("button", { name }).first();

/** By a pointer, from one thing onto another. */
export const drag = (from: string | RegExp, onto: string | RegExp) =>
  userEvent.dragAndDrop(thing(from), thing(onto));

const focused = (): string => {
  const at = document.activeElement;
  return `${at?.getAttribute("aria-label") ?? ""} ${at?.textContent ?? ""}`;
};

/** Presses a key until what has the focus is called so. Fails where it never is. */
export async function keyTo(name: string | RegExp, key = "{Tab}", most = 40): Promise<void> {
  const is = () => (typeof name === "string" ? focused().includes(name) : name.test(focused()));
  for (let pressed = 0; !is() && pressed < most; pressed++) await keys(key);
  expect(focused()).toMatch(name);
}
