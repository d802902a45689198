import type { Page } from "playwright";
import type { Recording } from "./ears.ts";
import { press, shownBy } from "./press.ts";

/** What the tap hands over: both sides from the moment a sound began, as bytes of 32-bit floats in base64. */
interface Tapped {
  readonly rate: number;
  readonly left: string;
  readonly right: string;
}

interface TapPage {
  readonly tap: {
    readonly clear: () => void;
    readonly take: () => Tapped;
    /** All that came since it was cleared. */
    readonly latest: () => Tapped;
  };
}

/**
 * Runs in the page, before the page's own code: whatever the browser connects to its output is recorded too, with the context's
 * clock in a third channel, so that a sample knows its time however late it is handed over. The product knows nothing of it.
 */
function layTap(): void {
  interface Block {
    readonly at: number;
    readonly left: Float32Array;
    readonly right: Float32Array;
  }
  let blocks: Block[] = [];
  let recorder: { readonly context: BaseAudioContext; readonly node: AudioNode } | undefined;
  let began = 0;
  const plain = AudioNode.prototype.connect as (
    this: AudioNode,
    to: AudioNode,
    output?: number,
    input?: number,
  ) => AudioNode;
  const record = (context: AudioContext): AudioNode => {
    const sides = context.createChannelSplitter(2);
    const lines = context.createChannelMerger(3);
    const clock = context.createConstantSource();
    const node = context.createScriptProcessor(4096, 3, 1);
    // From a moment still to come: one that has passed would be taken for now, and the clock would be late for good.
    const start = context.currentTime + 0.02;
    clock.offset.setValueAtTime(0, 0);
    clock.offset.setValueAtTime(start, start);
    clock.offset.linearRampToValueAtTime(start + 600, start + 600);
    clock.start();
    plain.call(sides, lines, 0, 0);
    plain.call(sides, lines, 1, 1);
    plain.call(clock, lines, 0, 2);
    plain.call(lines, node);
    plain.call(node, context.destination);
    let early: Omit<Block, "at">[] = [];
    node.onaudioprocess = ({ inputBuffer }) => {
      const left = inputBuffer.getChannelData(0).slice();
      const right = inputBuffer.getChannelData(1).slice();
      const times = inputBuffer.getChannelData(2);
      early.push({ left, right });
      const known = times.findIndex((time) => time > 0);
      if (known < 0) return; // the clock has not begun
      const at = (times[known] ?? 0) - known / context.sampleRate;
      const block = left.length / context.sampleRate;
      blocks.push(...early.map((one, n) => ({ ...one, at: at - (early.length - 1 - n) * block })));
      early = [];
    };
    return sides;
  };
  AudioNode.prototype.connect = function (
    this: AudioNode,
    ...args: [AudioNode, number?, number?]
  ): AudioNode {
    const { context } = this;
    if (this instanceof AudioBufferSourceNode) began = context.currentTime;
    if (args[0] instanceof AudioDestinationNode && context instanceof AudioContext) {
      if (recorder?.context !== context) recorder = { context, node: record(context) };
      plain.call(this, recorder.node);
    }
    return plain.apply(this, args);
  } as typeof AudioNode.prototype.connect;
  const packed = (samples: Float32Array): string => {
    const bytes = new Uint8Array(samples.buffer);
    let text = "";
    for (let at = 0; at < bytes.length; at += 8192)
      text += String.fromCharCode(...bytes.subarray(at, at + 8192));
    return btoa(text);
  };
  /** One side on a line of time from where the sound began, two seconds long. */
  const line = (side: "left" | "right", rate: number): Float32Array => {
    const samples = new Float32Array(2 * rate);
    for (const block of blocks) {
      const from = Math.round((block.at - began) * rate);
      for (let at = Math.max(0, -from); at < block[side].length && from + at < samples.length; at++)
        samples[from + at] = block[side][at] ?? 0;
    }
    return samples;
  };
  const take = (): Tapped => {
    const rate = recorder?.context.sampleRate ?? 48_000;
    return { rate, left: packed(line("left", rate)), right: packed(line("right", rate)) };
  };
  const latest = (): Tapped => {
    const rate = recorder?.context.sampleRate ?? 48_000;
    const all = (side: "left" | "right") =>
      packed(Float32Array.from(blocks.flatMap((block) => [...block[side]])));
    return { rate, left: all("left"), right: all("right") };
  };
  const clear = () => {
    blocks = [];
  };
  Object.assign(globalThis, { tap: { clear, take, latest } });
}

/** Lays the tap; once a page, before it loads anything. */
export async function prepare(page: Page): Promise<void> {
  // A compiler may name functions by a function of its own, which the page lacks.
  await page.addInitScript({ content: `globalThis.__name ??= (one) => one;(${layTap})()` });
}

/** Presses Play; whether it played to its end. Who hears nothing, since the press went astray on a busy page, presses again. */
async function plays(page: Page): Promise<boolean> {
  await forget(page);
  await press(page, "Play");
  const again = page.getByRole("button", { name: "play again", exact: true });
  return again.waitFor({ timeout: 15_000 }).then(
    () => true,
    () => false,
  );
}

/** Presses Play and hears it to its end. */
export async function listen(page: Page): Promise<Recording> {
  for (let tries = 0; !(await plays(page)); tries++)
    if (tries === 2)
      throw new Error(`Play was pressed three times, and the page shows: ${await shownBy(page)}`);
  await page.waitForTimeout(250); // the recorder hands over in blocks
  const { rate, left, right } = await page.evaluate(() =>
    (globalThis as unknown as TapPage).tap.take(),
  );
  return { rate, left: unpacked(left), right: unpacked(right) };
}

/** Forgets what was heard so far. */
export const forget = (page: Page): Promise<void> =>
  page.evaluate(() => (globalThis as unknown as TapPage).tap.clear());

/** All that was heard since. */
export async function heardSince(page: Page): Promise<Recording> {
  const { rate, left, right } = await page.evaluate(() =>
    (globalThis as unknown as TapPage).tap.latest(),
  );
  return { rate, left: unpacked(left), right: unpacked(right) };
}

/** Half a second of what is going on now. */
export async function hearNow(page: Page): Promise<Recording> {
  await page.waitForTimeout(150); // what was under way when a key was pressed
  await forget(page);
  await page.waitForTimeout(500);
  return heardSince(page);
}

/** Numbers from bytes in base64. */
const unpacked = (text: string): Float32Array => {
  const bytes = Uint8Array.from(Buffer.from(text, "base64"));
  return new Float32Array(bytes.buffer);
};

/** The level the page says it plays at, as an amplitude. */
export async function normalOf(page: Page): Promise<number> {
  const text = await page.getByText(/dBFS/).first().textContent();
  const level = Number((text ?? "").replace("−", "-").match(/-?\d+(\.\d+)?/)?.[0]);
  return 10 ** (level / 20);
}
