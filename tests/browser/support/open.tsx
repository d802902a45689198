import { cleanup, render } from "@testing-library/preact";
import { page as tab, userEvent } from "vitest/browser";
import { decode } from "#audio/decode.ts";
import { createFakeMeasurer } from "#audio/fake-measurer.ts";
import { createFakePlayer } from "#audio/fake-player.ts";
import { createFakeRecorder } from "#audio/fake-recorder.ts";
import { createOutputs } from "#audio/outputs.ts";
import { createFakeCopy } from "#offline/fake-copy.ts";
import { createFakeTurns } from "#storage/fake-turns.ts";
import { createMemoryShelf } from "#storage/memory-shelf.ts";
import { createMemoryStorage } from "#storage/memory-storage.ts";
import { createSettings } from "#storage/settings.ts";
import { createStore } from "#storage/store.ts";
import { App } from "#ui/screens/app.tsx";
import type { Instruments } from "#ui/screens/use-instruments.ts";
import { judging as inWorker, type Judging } from "#worker/judging.ts";
import { measuring } from "#worker/measuring.ts";
import { packing } from "#worker/packing.ts";
import "#ui/style.css";

let named = 0;
/** As the browser's chance would: never twice the same. */
const name = () => `session ${++named}`;

/** The page with a player that makes no sound and a measurer that hears what it is told, with nothing kept unless a shelf is handed in. */
export function open({
  shelf = createMemoryShelf(),
  storage = createMemoryStorage(),
  turns = createFakeTurns().tab(),
  seeds = [] as readonly number[],
  outputs = createOutputs(),
  instruments = undefined as Instruments | undefined,
  judging = inWorker as Judging,
  tongues = ["en"] as readonly string[],
} = {}) {
  cleanup();
  const player = createFakePlayer();
  const copy = createFakeCopy();
  const recorder = createFakeRecorder();
  const measurer = createFakeMeasurer();
  const fakes = { recorder, measurer, judging, reading: measuring };
  let time = 0;
  let drawn = 0;
  const now = () => ++time;
  render(
    <App
      player={player}
      store={createStore({ shelf, turns, older: () => storage, now, name })}
      settings={createSettings(() => storage, tongues)}
      outputs={outputs}
      copy={copy}
      packing={packing}
      instruments={async () => instruments ?? fakes}
      now={now}
      decode={decode}
      chance={() => seeds[drawn++ % seeds.length] ?? 0}
    />,
  );
  return { player, copy, recorder, measurer, shelf, storage, log: () => shelf.log() };
}

export const button = (name: string | RegExp) =>
  tab.getByRole("button", { name, exact: true }).first();

export const press = (name: string | RegExp) => button(name).click();

export const heading = () => tab.getByRole("heading", { level: 1 });

/** Keys as a keyboard sends them, in `user-event`'s notation: '{Enter}', '{ArrowLeft}'. */
export const keys = (text: string) => userEvent.keyboard(text);

/** From the first screen to the bench rig of a number. */
export async function openBench(number: number) {
  await tab.getByLabelText("rig number").fill(String(number));
  await press("A rig to try without gear");
}
