import { levelStep, startLevel } from "#core/signals/caps.ts";
import { type InstrumentName, instruments } from "#core/signals/instruments.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";
import { after, Bout, type BoutEnded, type BoutHow, before } from "./bout.ts";
import { moved, steady } from "./course.ts";
import { LevelSearch } from "./level-search.ts";
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
import { type Load, Output } from "./output.ts";
import type { Recorder } from "./recorder.ts";
import { returnedOf } from "./returned.ts";
import { type Route, systemRoute } from "./route.ts";
import { Watched } from "./watched.ts";

/** The real measurer. `load` fetches the file that makes contexts. */
export const createMeasurer = (
  recorder: Recorder,
  load: Load = () => import("./new-context.ts"),
): Measurer => new WebMeasurer(recorder, load);

/** A recording that is longer than it should be by this has something wrong with it. */
const overdue: Seconds = 4;
/** How often it is told what comes back. */
const telling: Seconds = 0.1;
const forEver: Seconds = Number.POSITIVE_INFINITY;

const atFirst: MeasurerWorld = {
  doing: "nothing",
  trouble: undefined,
  level: startLevel,
  returned: undefined,
  route: systemRoute,
};

type BoutOwn = Pick<BoutHow, "name" | "over" | "longest" | "input" | "onBlock" | "onOpen">;

class WebMeasurer implements Measurer {
  readonly #recorder: Recorder;
  readonly #output: Output;
  readonly #world = new Watched<MeasurerWorld>(atFirst);
  #course = steady(startLevel);
  #bout: Bout | undefined;

  constructor(recorder: Recorder, load: Load) {
    this.#recorder = recorder;
    this.#output = new Output(load, (why) => this.#onOutput(why));
  }

  readonly world = this.#world.now;
  readonly subscribe = this.#world.subscribe;
  readonly warm = () => void this.#output.warm();
  readonly silence = () => this.#bout?.stop();
  readonly louder = () => this.#step(levelStep);
  readonly softer = () => this.#step(-levelStep);

  readonly measure = async ({ input, onProgress }: MeasureHow = {}): Promise<Measured> => {
    const total = before + instruments.multitone.duration + after;
    const ended = await this.#press("measuring", {
      name: "multitone",
      over: false,
      longest: total + overdue,
      input,
      onBlock: (_, at) => onProgress?.({ done: Math.min(at, total), total }),
    });
    if (ended.ended !== "recorded") return ended;
    const { granted, capture, gaps } = ended.recorded;
    if (granted === undefined || capture === undefined) return { ended: "stopped" };
    return { ended: "measured", granted, capture, gaps, level: ended.level };
  };

  readonly findLevel = async ({ input }: MeasureHow = {}): Promise<Found> => {
    const search = new LevelSearch();
    let found: Found | undefined;
    const ended = await this.#press("finding the level", {
      name: "multitone",
      over: true,
      longest: forEver,
      input,
      onBlock: (channels, at, begun) => {
        if (!begun) {
          search.before(channels, at);
          return;
        }
        const step = search.during(channels, at, this.#course.to);
        if (step === "louder" || step === "softer") this[step]();
        else if (step) {
          found = { ended: "found", found: step, level: this.#course.to };
          this.silence();
        }
      },
    });
    return found ?? (ended.ended === "recorded" ? { ended: "stopped" } : ended);
  };

  readonly watch = async (
    name: InstrumentName,
    { input, onBlock, onOpen }: WatchHow,
  ): Promise<Broken> => {
    const own = { name, over: true, longest: forEver, input, onBlock, onOpen };
    const ended = await this.#press("watching", own);
    return ended.ended === "recorded" ? { ended: "stopped" } : ended;
  };

  readonly use = (route: Route) => {
    this.silence();
    this.#calm();
    this.#output.use(route);
    this.#world.change({ route, trouble: undefined });
  };

  readonly close = () => {
    this.silence();
    this.#output.close();
  };

  /** One press: whatever was going on ends first. Both ways are opened before this returns. */
  async #press(doing: MeasurerWorld["doing"], own: BoutOwn): Promise<BoutEnded> {
    this.silence();
    let told = Number.NEGATIVE_INFINITY;
    const onBlock: BoutHow["onBlock"] = (channels, at, begun) => {
      if (at >= told + telling) this.#world.change({ returned: returnedOf(channels) });
      if (at >= told + telling) told = at;
      own.onBlock(channels, at, begun);
    };
    const { route } = this.#world.now();
    const how = { ...own, onBlock, route, course: () => this.#course };
    const bout = new Bout(how, this.#output.open(), this.#recorder);
    this.#bout = bout;
    this.#world.change({ doing, trouble: undefined, returned: undefined });
    const ended = await bout.ended;
    if (bout === this.#bout) this.#left(ended);
    return ended;
  }

  #left(ended: BoutEnded): void {
    this.#bout = undefined;
    const trouble = ended.ended === "trouble" ? ended.why : undefined;
    this.#world.change({ doing: "nothing", trouble, returned: undefined });
    if (trouble === undefined) return;
    this.#calm();
    this.#output.drop();
  }

  /** Trouble of the way out: now, or between two presses. */
  #onOutput(why: MeasurerTrouble): void {
    if (this.#bout) this.#bout.fail(why);
    else this.#left({ ended: "trouble", why });
  }

  #calm(): void {
    this.#course = steady(Math.min(startLevel, this.#course.to));
    this.#world.change({ level: this.#course.to });
  }

  #step(by: Decibels): void {
    const { context } = this.#output;
    if (context === undefined) return;
    this.#course = moved(this.#course, by, context.currentTime);
    this.#world.change({ level: this.#course.to });
    this.#bout?.step();
  }
}
