import { afterEach, beforeEach, expect, vi } from "vitest";
import type { Recorder } from "#audio/recorder.ts";
import { createRecorder } from "#audio/web-recorder.ts";
import { tapOutputs } from "./tap.ts";

/** A recorder for every test of a file, and what it takes of the browser. */
export class InputStage {
  recorder: Recorder = createRecorder();
  /** All streams that were given. */
  streams: MediaStream[] = [];
  /** All contexts that an input was led into. */
  contexts: AudioContext[] = [];
  /** A stream is handed over no sooner than this. */
  gate: Promise<void> = Promise.resolve();

  constructor() {
    let tap = tapOutputs();
    tap.remove();
    beforeEach(() => {
      [this.streams, this.contexts, this.gate] = [[], [], Promise.resolve()];
      tap = tapOutputs();
      this.recorder = createRecorder();
      this.#watch();
    });
    afterEach(() => {
      this.recorder.close();
      expect(this.live).toBe(false);
      // Nothing of an input is ever led to an output.
      expect(tap.contexts).toEqual([]);
      tap.remove();
      vi.restoreAllMocks();
      vi.unstubAllGlobals();
    });
  }

  get track(): MediaStreamTrack | undefined {
    return this.streams.at(-1)?.getTracks()[0];
  }

  /** Whether a light would be on. */
  get live(): boolean {
    const tracks = this.streams.flatMap((stream) => stream.getTracks());
    return tracks.some(({ readyState }) => readyState === "live");
  }

  /** Begins to record; how it ends, once samples come. */
  async recording(): Promise<{ readonly ended: Promise<unknown> }> {
    const ended = this.recorder.record({ longest: 20, keep: true });
    await expect.poll(() => this.recorder.world().doing, { timeout: 5000 }).toBe("recording");
    return { ended };
  }

  #watch(): void {
    const { mediaDevices } = navigator;
    const ask = mediaDevices.getUserMedia.bind(mediaDevices);
    vi.spyOn(MediaDevices.prototype, "getUserMedia").mockImplementation(async (how) => {
      const stream = await ask(how);
      this.streams.push(stream);
      await this.gate;
      return stream;
    });
    const { contexts } = this;
    const lead = AudioContext.prototype.createMediaStreamSource;
    vi.spyOn(AudioContext.prototype, "createMediaStreamSource").mockImplementation(function (
      this: AudioContext,
      stream,
    ) {
      contexts.push(this);
      return lead.call(this, stream);
    });
  }
}
