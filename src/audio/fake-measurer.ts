import { startLevel } from "#core/signals/caps.ts";
import type { InstrumentName } from "#core/signals/instruments.ts";
import type { Granted } from "./granted.ts";
import type {
  Broken,
  Found,
  Measured,
  MeasureHow,
  Measurer,
  MeasurerTrouble,
  MeasurerWorld,
  WatchHow,
} from "./measurer.ts";
import { type Route, systemRoute } from "./route.ts";
import { Watched } from "./watched.ts";

/** What was asked of the measurer, in order. */
type Call =
  | { readonly asked: "measure"; readonly how: MeasureHow }
  | { readonly asked: "findLevel"; readonly how: MeasureHow }
  | { readonly asked: "watch"; readonly name: InstrumentName; readonly how: WatchHow }
  | { readonly asked: "use"; readonly route: Route }
  | { readonly asked: "warm" | "silence" | "louder" | "softer" | "close" };

/** A measurer that makes no sound and hears what it is told; whatever was pressed goes on until it is told how it ends. */
export interface FakeMeasurer extends Measurer {
  readonly calls: readonly Call[];
  /** Lets something happen in its world. */
  readonly change: (part: Partial<MeasurerWorld>) => void;
  /** The input is open: of a watch. */
  readonly open: (granted: Granted) => void;
  /** Some of what comes back: of a watch. */
  readonly hear: (channels: readonly Float32Array[], at: number) => void;
  /** How far a measurement is. */
  readonly reach: (done: number, total: number) => void;
  /** What was pressed has come to its end. */
  readonly end: (how: Measured | Found) => void;
  /** Something befalls it. */
  readonly fail: (why: MeasurerTrouble) => void;
}

const idle: MeasurerWorld = {
  doing: "nothing",
  trouble: undefined,
  level: startLevel,
  returned: undefined,
  route: systemRoute,
};

/** A fake: it begins at once, and ends as told, or stopped by silence. */
export function createFakeMeasurer(): FakeMeasurer {
  const calls: Call[] = [];
  const world = new Watched<MeasurerWorld>(idle);
  let pressed: Call | undefined;
  let leave: ((ended: Measured | Found | Broken) => void) | undefined;
  const finish = (ended: Measured | Found | Broken) => {
    const told = leave;
    leave = undefined;
    if (told === undefined) return;
    const trouble = ended.ended === "trouble" ? ended.why : undefined;
    world.change({ doing: "nothing", trouble, returned: undefined });
    told(ended);
  };
  const stop = () => finish({ ended: "stopped" });
  const press = <Ended>(doing: MeasurerWorld["doing"], call: Call): Promise<Ended> => {
    stop();
    calls.push(call);
    pressed = call;
    world.change({ doing, trouble: undefined });
    return new Promise((resolve) => {
      leave = (ended) => resolve(ended as Ended);
    });
  };
  return {
    calls,
    change: world.change,
    ...told(() => pressed),
    end: finish,
    fail: (why) => finish({ ended: "trouble", why }),
    warm: () => void calls.push({ asked: "warm" }),
    measure: (how = {}) => press("measuring", { asked: "measure", how }),
    findLevel: (how = {}) => press("finding the level", { asked: "findLevel", how }),
    watch: (name, how) => press("watching", { asked: "watch", name, how }),
    silence: stop,
    ...stepped(world, calls),
    use: (route) => {
      calls.push({ asked: "use", route });
      stop();
      world.change({ route, level: startLevel });
    },
    world: world.now,
    subscribe: world.subscribe,
    close: stop,
  };
}

/** The level, a step at a time and without end. */
function stepped(
  { now, change }: Watched<MeasurerWorld>,
  calls: Call[],
): Pick<Measurer, "louder" | "softer"> {
  const step = (asked: "louder" | "softer", by: number) => () => {
    calls.push({ asked });
    change({ level: now().level + by });
  };
  return { louder: step("louder", 3), softer: step("softer", -3) };
}

/** What it lets whoever pressed know meanwhile. */
const told = (pressed: () => Call | undefined): Pick<FakeMeasurer, "open" | "hear" | "reach"> => ({
  open: (granted) => {
    const call = pressed();
    if (call?.asked === "watch") call.how.onOpen?.(granted);
  },
  hear: (channels, at) => {
    const call = pressed();
    if (call?.asked === "watch") call.how.onBlock(channels, at);
  },
  reach: (done, total) => {
    const call = pressed();
    if (call?.asked === "measure") call.how.onProgress?.({ done, total });
  },
});
