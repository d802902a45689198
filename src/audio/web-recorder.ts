import type { Seconds } from "#core/units/units.ts";
import { askForNames, namedDevices } from "./devices.ts";
import type { Granted } from "./granted.ts";
import { Input } from "./input.ts";
import { Kept } from "./kept.ts";
import type {
  NoInputs,
  Recorded,
  Recorder,
  RecorderTrouble,
  RecorderWorld,
  RecordHow,
} from "./recorder.ts";
import type { RecordingBlock } from "./recording-block.ts";
import type { Device } from "./route.ts";
import { troubleOf } from "./stream-trouble.ts";
import { Watched } from "./watched.ts";

/** The real recorder. */
export const createRecorder = (): Recorder => new WebRecorder();

/** No more than this is ever kept. */
const longestKept: Seconds = 30;

const atFirst: RecorderWorld = { doing: "nothing", trouble: undefined, granted: undefined };

/** One press of record. */
interface Run {
  readonly how: RecordHow;
  readonly kept: Kept;
  readonly input: Input;
  readonly resolve: (recorded: Recorded) => void;
  granted?: Granted;
  /** Of the first and the last block, on the page's clock in milliseconds. */
  began?: number;
  ended?: number;
}

class WebRecorder implements Recorder {
  readonly #world = new Watched<RecorderWorld>(atFirst);
  #run: Run | undefined;

  readonly world = this.#world.now;
  readonly subscribe = this.#world.subscribe;
  readonly canRecord = () =>
    navigator.mediaDevices?.getUserMedia !== undefined && typeof AudioWorkletNode !== "undefined";
  readonly known = () => namedDevices("audioinput");

  readonly named = async (): Promise<readonly Device[] | NoInputs> => {
    if (!this.canRecord()) return "cannot record";
    const refused = await askForNames();
    const devices = await this.known();
    if (devices.length > 0) return devices;
    return refused !== undefined && troubleOf(refused) === "not allowed"
      ? "not allowed"
      : "no input";
  };

  readonly record = (how: RecordHow): Promise<Recorded> => {
    this.stop();
    return new Promise((resolve) => {
      const input = new Input(
        (block) => this.#take(run, block),
        (why) => this.#fail(run, why),
      );
      const run: Run = { how, kept: new Kept(how.keep ?? false), input, resolve };
      this.#run = run;
      this.#world.change({ doing: "opening", trouble: undefined, granted: undefined });
      this.#open(run).catch(() => this.#fail(run, "lost"));
    });
  };

  readonly stop = () => this.#end("stopped");
  readonly close = this.stop;

  async #open(run: Run): Promise<void> {
    if (!this.canRecord()) return this.#fail(run, "cannot record");
    const granted = await run.input.open(run.how.input);
    if (this.#run !== run || granted === undefined) return;
    if (typeof granted === "string") return this.#fail(run, granted);
    run.granted = granted;
    this.#world.change({ doing: "recording", granted });
    run.how.onOpen?.(granted);
  }

  #take(run: Run, block: RecordingBlock): void {
    if (run !== this.#run) return;
    const at = run.kept.take(block);
    if (at === false) {
      this.#fail(run, "changed");
      return;
    }
    run.ended = performance.now();
    run.began ??= run.ended;
    run.how.onBlock?.(block.channels, at / block.rate);
    if (run.kept.frames >= longest(run) * block.rate) this.#end("to the end");
  }

  #end(recorded: "to the end" | "stopped"): void {
    const run = this.#run;
    if (run === undefined) return;
    this.#leave(run, undefined);
    const { granted, kept, began = 0, ended = 0 } = run;
    const rate = granted?.rate ?? 1;
    const capture = granted && kept.capture(rate, Math.round(longest(run) * rate));
    const gaps = kept.gaps((ended - began) / 1000, rate);
    run.resolve({ recorded, granted, capture, gaps });
  }

  /** Ends a press for a reason, while it lasts. */
  #fail(run: Run, why: RecorderTrouble): void {
    if (run !== this.#run) return;
    this.#leave(run, why);
    run.resolve({ recorded: "trouble", why });
  }

  #leave(run: Run, trouble: RecorderTrouble | undefined): void {
    this.#run = undefined;
    run.input.close();
    this.#world.change({ doing: "nothing", trouble });
  }
}

const longest = ({ how }: Run): Seconds =>
  how.keep ? Math.min(how.longest, longestKept) : how.longest;
