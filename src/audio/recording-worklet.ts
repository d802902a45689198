import { type RecordingBlock, recordingProcessor } from "./recording-block.ts";

/*
 * Runs on the browser's audio thread, in a file of its own that the page's policy lets in. It has no output: nothing that comes in
 * can go out to anybody's ears.
 */

declare const currentFrame: number;
declare const sampleRate: number;
declare class AudioWorkletProcessor {
  readonly port: MessagePort;
}
declare function registerProcessor(name: string, of: new () => AudioWorkletProcessor): void;

/** Frames that are handed over at a time: 21 ms at 48 kHz. */
const length = 1024;

class Recording extends AudioWorkletProcessor {
  #channels: Float32Array<ArrayBuffer>[] = [];
  #frame = 0;
  #filled = 0;

  /** Called with each piece of what comes in, on as many channels as there are just then: none where nothing comes. */
  process([input = []]: readonly (readonly Float32Array[])[]): boolean {
    const [{ length: piece } = { length: 0 }] = input;
    const goesOn =
      input.length === this.#channels.length &&
      currentFrame === this.#frame + this.#filled &&
      this.#filled + piece <= length;
    if (!goesOn) this.#handOver();
    if (this.#filled === 0) this.#begin(input.length);
    for (const [at, samples] of input.entries()) this.#channels[at]?.set(samples, this.#filled);
    this.#filled += piece;
    if (this.#filled >= length) this.#handOver();
    return true;
  }

  #begin(channels: number): void {
    this.#channels = Array.from({ length: channels }, () => new Float32Array(length));
    this.#frame = currentFrame;
  }

  #handOver(): void {
    if (this.#filled === 0) return;
    const channels = this.#channels.map((samples) =>
      this.#filled < length ? samples.slice(0, this.#filled) : samples,
    );
    const block: RecordingBlock = { channels, frame: this.#frame, rate: sampleRate };
    this.port.postMessage(
      block,
      channels.map(({ buffer }) => buffer),
    );
    this.#filled = 0;
  }
}

registerProcessor(recordingProcessor, Recording);
