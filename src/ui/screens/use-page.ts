import { useEffect, useState } from "preact/hooks";
import type { NoFile } from "#audio/decode.ts";
import type { Outputs } from "#audio/outputs.ts";
import type { Player } from "#audio/player.ts";
import type { World } from "#audio/world.ts";
import type { OwnSound } from "#core/hearing/own-sound.ts";
import type { Rig } from "#core/rig/rig.ts";
import { example } from "#core/rig/rigs.ts";
import type { Hertz } from "#core/units/units.ts";
import type { Copy } from "#offline/copy.ts";
import type { SettingsStore } from "#storage/settings.ts";
import type { Store } from "#storage/store.ts";
import type { Packing } from "#worker/packing.ts";
import { Keeper } from "./keeper.ts";
import type { Keeping } from "./keeping.ts";
import { begun, firstPage, type Page, type View } from "./page.ts";
import { type Instruments, useBench } from "./use-instruments.ts";
import { useSettings } from "./use-settings.ts";
import { useWorld } from "./use-world.ts";

/** Everything outside the page, handed in. */
export interface Edges {
  readonly player: Player;
  readonly store: Store;
  readonly settings: SettingsStore;
  readonly outputs: Outputs;
  readonly copy: Copy;
  readonly packing: Packing;
  /** All that measures, fetched when it is wanted. */
  readonly instruments: () => Promise<Instruments>;
  /** A sound file of the listener's own, at a sampling rate. */
  readonly decode: (file: Blob, rate: Hertz) => Promise<OwnSound | NoFile>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** A whole number drawn by chance. */
  readonly chance: () => number;
}

/** The page, the world, and what a press may do on every screen. */
export interface Held {
  readonly page: Page;
  /** How the page's session is kept. */
  readonly keeping: Keeping;
  /** Goes on with another session that is kept. */
  readonly open: Keeper["open"];
  /** Writes the session here, where another tab did. */
  readonly takeOver: () => void;
  readonly world: World;
  readonly edges: Edges;
  /** What measures; undefined until it was wanted and has come. */
  readonly instruments: Instruments | undefined;
  readonly fetchInstruments: () => void;
  /** Something for instruments is played, or an input is open. */
  readonly measuring: boolean;
  /** Whatever sounds and whatever listens ends. */
  readonly silence: () => void;
  /** Begins a session with real gear. */
  readonly begin: (rig: Rig) => void;
  /** Begins one with the bench rig of a number, or of one drawn by chance. */
  readonly bench: (number?: number) => void;
  readonly show: (view: View) => void;
  readonly change: (how: (page: Page) => Page) => void;
}

/** Numbers drawn for the bench stay short enough to be said aloud. */
const benchNumbers = 9999;

export function usePage(edges: Edges): Held {
  const { player, store, now, chance } = edges;
  const [keeper] = useState(() => new Keeper(store, firstPage(edges.settings.read()), now));
  const [{ page, keeping }, show] = useState(keeper.shown);
  useEffect(() => keeper.start(show), [keeper]);
  const { change } = keeper;
  const world = useWorld(player);
  const bench = useBench(edges.instruments, () =>
    change((one) => ({ ...one, notice: "not loaded" })),
  );
  const silence = () => {
    player.silence();
    bench.instruments?.measurer.silence();
  };
  const { tongue } = page.settings;
  useEffect(() => player.speakIn(tongue), [player, tongue]);
  useEffect(() => player.warm(), [player]);
  useSettings(page.settings, edges.settings);
  return {
    page,
    keeping,
    world,
    edges,
    open: keeper.open,
    takeOver: keeper.takeOver,
    ...bench,
    silence,
    change,
    begin: (rig) => change((one) => begun(one, rig, undefined, now())),
    bench: (number = 1 + (chance() % benchNumbers)) =>
      change((one) => begun(one, example, number, now())),
    show: (view) => {
      silence();
      change((one) => ({ ...one, view }));
    },
  };
}
