import type { IAudioContext } from "standardized-audio-context";
import type { Seconds } from "#core/units/units.ts";

/** What can be wrong with the way out. */
export type OutputTrouble = "no output" | "suspended" | "lost" | "hidden" | "not loaded";

/** Fetches the file that makes contexts. */
export type Load = () => Promise<{ readonly newContext: () => IAudioContext }>;

/** A browser that has not begun within this time is not going to; milliseconds. */
const patience = 2000;
/** A context is left open this long, so that what was fading has faded; milliseconds. */
const farewell = 100;

/**
 * The audio context, kept: made in a press, watched, and given up at the first trouble, since what plays after a trouble
 * is another sound on perhaps another device. `onTrouble` hears of what happens by itself.
 */
export class Output {
  readonly #load: Load;
  readonly #onTrouble: (why: OutputTrouble) => void;
  #make: (() => IAudioContext) | undefined;
  #context: IAudioContext | undefined;

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
   * A running context with two channels, or why not. To be called in a press: when `warm` is done the context is made before
   * this returns, else within the few seconds that a press counts for.
   */
  async open(): Promise<IAudioContext | OutputTrouble> {
    if (document.hidden) return "hidden";
    if (this.#make === undefined && !(await this.warm())) return "not loaded";
    const context = this.#made();
    if (context === undefined) return "no output";
    if (!(await runs(context))) return "suspended";
    return document.hidden ? "hidden" : context;
  }

  /** Gives the context up. */
  drop(): void {
    const context = this.#context;
    this.#context = undefined;
    setTimeout(() => context?.close().catch(() => undefined), farewell);
  }

  /** Gives the context up and stops watching. */
  close(): void {
    this.drop();
    document.removeEventListener("visibilitychange", this.#onVisibility);
    navigator.mediaDevices?.removeEventListener("devicechange", this.#onDevices);
  }

  /** The context, made if need be; undefined when there is no output, or none with two sides. */
  #made(): IAudioContext | undefined {
    try {
      this.#context ??= this.#watched(this.#make?.());
    } catch {
      return undefined;
    }
    return (this.#context?.destination.maxChannelCount ?? 0) < 2 ? undefined : this.#context;
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
    return context;
  }

  /** Trouble of a context, unless it was given up. */
  #lose(context: IAudioContext | undefined, why: OutputTrouble): void {
    if (context !== undefined && context === this.#context) this.#onTrouble(why);
  }

  readonly #onVisibility = () => {
    if (document.hidden) this.#lose(this.#context, "hidden");
  };

  /** Another device is another loudness: begin again. */
  readonly #onDevices = () => this.#lose(this.#context, "lost");
}

/** Whether the context runs, after having been asked to. */
async function runs(context: IAudioContext): Promise<boolean> {
  if (context.state !== "running") {
    const late = new Promise((resolve) => setTimeout(resolve, patience));
    await Promise.race([context.resume().catch(() => undefined), late]);
  }
  return context.state === "running";
}

/** The browser's own context: the library does not hand `outputLatency` on. */
const nativeOf = (context: IAudioContext | undefined): { outputLatency?: number } | undefined =>
  (context as unknown as { _nativeAudioContext?: { outputLatency?: number } } | undefined)
    ?._nativeAudioContext;
