import type { IAudioContext } from "standardized-audio-context";
import type { Seconds } from "#core/units/units.ts";
import { type Route, systemRoute } from "./route.ts";
import { runs } from "./runs.ts";
import { watchClock } from "./watch-clock.ts";

/** What can be wrong with the way out. */
export type OutputTrouble =
  | "no output"
  | "suspended"
  | "lost"
  | "hidden"
  | "not loaded"
  /** The device that was chosen is not there any more. */
  | "gone"
  /** The browser would not play to the device that was chosen. */
  | "not that device";

/** What makes a context: on a device by its name in this page, or on the system's own. Throws when there is none to be had. */
export type NewContext = (device?: string) => IAudioContext;

/** Fetches the file that makes contexts. */
export type Load = () => Promise<{ readonly newContext: NewContext }>;

/** A context is left open this long, so that what was fading has faded; milliseconds. */
const farewell = 100;

/**
 * The audio context, kept: made in a press, watched, and given up at the first trouble, since what plays after a trouble
 * is another sound on perhaps another device. `onTrouble` hears of what happens by itself.
 */
export class Output {
  readonly #load: Load;
  readonly #onTrouble: (why: OutputTrouble) => void;
  #make: NewContext | undefined;
  #context: IAudioContext | undefined;
  #route = systemRoute;
  #unwatch = () => {};

  constructor(load: Load, onTrouble: (why: OutputTrouble) => void) {
    this.#load = load;
    this.#onTrouble = onTrouble;
    document.addEventListener("visibilitychange", this.#onVisibility);
    navigator.mediaDevices?.addEventListener("devicechange", this.#onDevices);
  }

  /** The context in use, if there is one. */
  get context(): IAudioContext | undefined {
    return this.#context;
  }

  /** Sends the sound another way from the next press on; the context in use is given up. */
  use(route: Route): void {
    this.drop();
    this.#route = route;
  }

  /** From the program to the ear, as far as the browser knows; undefined where it does not say. */
  get delay(): Seconds | undefined {
    const { baseLatency } = this.#context ?? {};
    const after = nativeOf(this.#context)?.outputLatency;
    return baseLatency === undefined || after === undefined ? undefined : baseLatency + after;
  }

  /** Fetches what a press will need. */
  async warm(): Promise<boolean> {
    try {
      this.#make ??= (await this.#load()).newContext;
      return true;
    } catch {
      return false;
    }
  }

  /**
   * A running context with the channels of the route, or why not. To be called in a press: when `warm` is done the context is
   * made before this returns, else within the few seconds that a press counts for.
   */
  async open(): Promise<IAudioContext | OutputTrouble> {
    if (document.hidden) return "hidden";
    if (this.#make === undefined && !(await this.warm())) return "not loaded";
    const context = this.#made();
    if (typeof context === "string") return context;
    if (!(await runs(context))) return "suspended";
    return document.hidden ? "hidden" : context;
  }

  /** Gives the context up. */
  drop(): void {
    const context = this.#context;
    this.#context = undefined;
    this.#unwatch();
    setTimeout(() => context?.close().catch(() => undefined), farewell);
  }

  /** Gives the context up and stops watching. */
  close(): void {
    this.drop();
    document.removeEventListener("visibilitychange", this.#onVisibility);
    navigator.mediaDevices?.removeEventListener("devicechange", this.#onDevices);
  }

  /** The context, made if need be; else why there is none on this route. */
  #made(): IAudioContext | OutputTrouble {
    const { device, first } = this.#route;
    try {
      this.#context ??= this.#watched(this.#make?.(device?.id));
    } catch {
      return device ? "not that device" : "no output";
    }
    const context = this.#context;
    if (device && nativeOf(context)?.sinkId !== device.id) return "not that device";
    const channels = context?.destination.maxChannelCount ?? 0;
    if (context === undefined || channels < first + 2) return "no output";
    // Of a device with more channels all are opened, so that none but the pair gets anything.
    if (first > 0) context.destination.channelCount = channels;
    return context;
  }

  #watched(context: IAudioContext | undefined): IAudioContext | undefined {
    let ran = false;
    context?.addEventListener("statechange", () => {
      if (ran && context.state !== "running") {
        this.#lose(context, context.state === "closed" ? "lost" : "suspended");
      }
      ran ||= context.state === "running";
    });
    context?.addEventListener("error", () => this.#lose(context, "no output"));
    // Asking what there is makes a browser look, which else may learn of nothing.
    const ask = () => void (this.#route.device && this.#onDevices());
    if (context) this.#unwatch = watchClock(context, ask, () => this.#lose(context, "lost"));
    return context;
  }

  /** Trouble of a context, unless it was given up. */
  #lose(context: IAudioContext | undefined, why: OutputTrouble): void {
    if (context !== undefined && context === this.#context) this.#onTrouble(why);
  }

  readonly #onVisibility = () => {
    if (document.hidden) this.#lose(this.#context, "hidden");
  };

  /** What the system plays to may be another device now, and another loudness: begin again. One that was chosen is still itself. */
  readonly #onDevices = async () => {
    const { device } = this.#route;
    if (device === undefined) return this.#lose(this.#context, "lost");
    const all = await navigator.mediaDevices.enumerateDevices().catch(() => []);
    const there = all.some(
      ({ kind, deviceId }) => kind === "audiooutput" && deviceId === device.id,
    );
    if (!there && device === this.#route.device) this.#onTrouble("gone");
  };
}

interface Native {
  readonly outputLatency?: number;
  /** The device it plays to: none for the system's own. */
  readonly sinkId?: unknown;
}

/** The browser's own context: the library does not hand on what it knows of its output. */
const nativeOf = (context: IAudioContext | undefined): Native | undefined =>
  (context as unknown as { _nativeAudioContext?: Native } | undefined)?._nativeAudioContext;
