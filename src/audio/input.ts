import { asked, type Granted, grantedOf } from "./granted.ts";
import { type Listening, listenTo } from "./listening.ts";
import type { RecorderTrouble } from "./recorder.ts";
import type { RecordingBlock } from "./recording-block.ts";
import type { Device } from "./route.ts";
import { patience } from "./runs.ts";
import { troubleOf } from "./stream-trouble.ts";
import { watchInput } from "./watch-input.ts";

/** Before an input has begun a browser hands on zeros, and a dead one never stops: those of the first moments are left out; seconds. */
const longestBlank = 0.5;

/** One input from the press to its end: opened once, closed once. */
export class Input {
  readonly #onBlock: (block: RecordingBlock) => void;
  readonly #onTrouble: (why: RecorderTrouble) => void;
  #stream: MediaStream | undefined;
  #listening: Listening | undefined;
  #unwatch = () => {};
  #closed = false;
  #first: RecordingBlock | undefined;
  #begun = false;
  #onBegun: (block: RecordingBlock | undefined) => void = () => {};

  /** `onTrouble` hears of what happens by itself once it is open. */
  constructor(onBlock: (block: RecordingBlock) => void, onTrouble: (why: RecorderTrouble) => void) {
    this.#onBlock = onBlock;
    this.#onTrouble = onTrouble;
  }

  /** Opens it and waits for the first samples; what the browser gave, or why not. Undefined when it was closed meanwhile. */
  async open(device: Device | undefined): Promise<Granted | RecorderTrouble | undefined> {
    const opened = await this.#opened(device);
    if (this.#closed) return undefined;
    if (typeof opened === "string") this.close();
    return opened;
  }

  /** Closes it, whatever it is doing; the light goes out. */
  close(): void {
    this.#closed = true;
    this.#unwatch();
    for (const track of this.#stream?.getTracks() ?? []) track.stop();
    this.#listening?.close();
    this.#onBegun(undefined);
  }

  async #opened(device: Device | undefined): Promise<Granted | RecorderTrouble> {
    if (document.hidden) return "hidden";
    const track = await this.#asked(device);
    if (typeof track === "string") return track;
    const beginning = new Promise<RecordingBlock | undefined>((resolve) => {
      this.#onBegun = resolve;
      setTimeout(resolve, patience, undefined);
    });
    if (!(await this.#listen(track))) return "not loaded";
    const { context } = this.#listening ?? {};
    if (context && context.state !== "running") return "suspended";
    const block = await beginning;
    if (block === undefined) return track.muted ? "muted" : "nothing came";
    return document.hidden ? "hidden" : grantedOf(track, block.rate, context?.baseLatency);
  }

  /** The input's track, kept; one that comes when nobody waits any more is stopped at once. */
  async #asked(device: Device | undefined): Promise<MediaStreamTrack | RecorderTrouble> {
    if (navigator.mediaDevices?.getUserMedia === undefined) return "cannot record";
    try {
      this.#stream = await navigator.mediaDevices.getUserMedia(asked(device));
    } catch (error) {
      return troubleOf(error, device);
    }
    if (this.#closed) this.close();
    return this.#stream.getAudioTracks()[0] ?? "no input";
  }

  /** Whether it is listened to. */
  async #listen(track: MediaStreamTrack): Promise<boolean> {
    if (this.#closed || this.#stream === undefined) return false;
    const listening = await listenTo(this.#stream, track, (block) => this.#take(block)).catch(
      () => undefined,
    );
    if (listening === undefined) return false;
    this.#listening = listening;
    if (this.#closed) listening.close();
    else
      this.#unwatch = watchInput(track, listening, (why) => {
        if (!this.#closed && this.#begun) this.#onTrouble(why);
      });
    return true;
  }

  #take(block: RecordingBlock): void {
    if (this.#closed) return;
    this.#first ??= block;
    const blank = block.channels.every((channel) => channel.every((sample) => sample === 0));
    const early = block.frame - this.#first.frame < longestBlank * block.rate;
    if (!this.#begun && blank && early) return;
    this.#begun = true;
    this.#onBegun(block);
    this.#onBlock(block);
  }
}
