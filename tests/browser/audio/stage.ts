import { afterEach, beforeEach, expect, vi } from "vitest";
import { server } from "vitest/browser";
import type { Player } from "#audio/player.ts";
import { createPlayer } from "#audio/web-player.ts";
import { isGapless, levelOf, peakOf, soundingSpan, type Tap, tapOutputs } from "./tap.ts";

/** Lengths of a knock and of a burst in seconds, stated here so that the tests do not read them from the code. */
const knock = 0.12;
export const burst = 0.45;

/** Seconds until a press of silence must be there; Firefox 153 hides that it renders 10 to 20 ms at once (`engine-faults.test.ts`). */
export const soon = server.browser === "firefox" ? 0.05 : 0.02;

export const pause = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

/** Long enough for what was played to be recorded and for a context to be closed. */
export const settled = () => pause(200);

/** A player and a tap at the outputs for every test of a file. */
export class Stage {
  tap: Tap = tapOutputs();
  player: Player = createPlayer();

  constructor() {
    this.tap.remove();
    this.player.close();
    beforeEach(() => {
      this.tap = tapOutputs();
      this.player = createPlayer();
    });
    afterEach(async () => {
      this.player.close();
      vi.restoreAllMocks();
      await settled();
      this.tap.remove();
    });
  }

  /** Waits until something sounds; the browser's own context in which it does. */
  async sounding(): Promise<AudioContext> {
    const span = () => soundingSpan(this.tap.heard.slice(-2048));
    await expect.poll(span, { interval: 5, timeout: 5000 }).toBeDefined();
    const context = this.tap.contexts.at(-1);
    if (context === undefined) throw new Error("nothing reached an output");
    return context;
  }

  /**
   * Plays the beginning of a signal and silences it: both sides' level over its first knock, and the peak. Again where the
   * recorder lost a block of it, as it may on a busy machine; that says nothing of the player.
   */
  async heardOf(...what: Parameters<Player["play"]>) {
    for (let again = 0; again < 4; again += 1) {
      const { first, knocked, whole } = await this.#knock(what);
      const toItsEnd = (this.tap.heard.at(-1)?.at ?? 0) >= first + knock;
      const level = (side: "left" | "right") => levelOf(knocked, side, first, first + knock);
      if (whole && toItsEnd)
        return { left: level("left"), right: level("right"), peak: peakOf(this.tap.heard) };
    }
    throw new Error("no knock was recorded whole");
  }

  async #knock(what: Parameters<Player["play"]>) {
    this.tap.heard.length = 0;
    const playing = this.player.play(...what);
    await this.sounding();
    await pause(knock * 1000 + 30);
    this.player.silence();
    expect(await playing).toEqual({ ended: "silenced" });
    await settled();
    const { first } = soundingSpan(this.tap.heard) ?? { first: 0 };
    const soFar = this.tap.heard.filter(({ at }) => at < first + knock);
    const knocked = soFar.filter(({ at }) => at >= first);
    // With the last of the silence before it, else a knock that lost its beginning would pass for whole.
    const whole = isGapless(soFar.slice(-knocked.length - 1));
    return { first, knocked, whole };
  }

  press(what: "louder" | "softer", times: number): void {
    for (let press = 0; press < times; press += 1) this.player[what]();
  }
}
