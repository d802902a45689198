import type { Seconds } from "#core/units/units.ts";

/** A stereo sample as it arrived at the output, and when on the context's own clock. */
export interface Heard {
  readonly at: Seconds;
  readonly left: number;
  readonly right: number;
  /** The browser's own context that it was heard in: its clock is its own. */
  readonly context: BaseAudioContext;
}

export interface Tap {
  /** All that arrived since the tap was set or cleared. */
  readonly heard: Heard[];
  /** The browser's own contexts that have an output, the newest last. */
  readonly contexts: AudioContext[];
  readonly remove: () => void;
}

type Connect = (this: AudioNode, to: AudioNode, output?: number, input?: number) => void;

/** Listens at the browser's own outputs: whatever connects to one is connected to its recorder too. */
export function tapOutputs(): Tap {
  const heard: Heard[] = [];
  const recorders = new Map<BaseAudioContext, AudioNode>();
  const contexts: AudioContext[] = [];
  const connect = AudioNode.prototype.connect;
  const plain = connect as Connect;
  AudioNode.prototype.connect = function (this: AudioNode, ...args: unknown[]) {
    const { context } = this;
    if (args[0] instanceof AudioDestinationNode && context instanceof AudioContext) {
      if (!recorders.has(context)) contexts.push(context);
      const recorder = recorders.get(context) ?? recorderOf(context, heard, plain);
      recorders.set(context, recorder);
      plain.call(this, recorder);
    }
    return Reflect.apply(connect, this, args);
  } as typeof connect;
  const remove = () => {
    AudioNode.prototype.connect = connect;
  };
  return { heard, contexts, remove };
}

/** What came before the clock began: which sample it is tells its time, and what was lost between. */
interface Early extends Omit<Heard, "at"> {
  readonly count: number;
}

/** The counter begins anew after so many samples. */
const counts = 48_000;

/**
 * A node that adds up and keeps what is connected to it. A third channel carries the context's clock, so that every
 * sample knows its time however late it is handed over; a fourth counts, since the clock cannot begin at once.
 */
function recorderOf(context: AudioContext, heard: Heard[], connect: Connect): AudioNode {
  const sides = context.createChannelSplitter(2);
  const lines = context.createChannelMerger(4);
  const clock = context.createConstantSource();
  const recorder = context.createScriptProcessor(2048, 4, 1);
  // From a moment still to come: one that has passed would be taken for now, and the clock would be late for good.
  const start = context.currentTime + 0.02;
  clock.offset.setValueAtTime(0, 0);
  clock.offset.setValueAtTime(start, start);
  clock.offset.linearRampToValueAtTime(start + 60, start + 60);
  clock.start();
  const counter = counterOf(context);
  counter.start();
  const early: Early[] = [];
  recorder.onaudioprocess = ({ inputBuffer }) => {
    // Copied at once: a browser that is ahead writes into the same memory again.
    const [left, right, times, count] = [0, 1, 2, 3].map((n) =>
      inputBuffer.getChannelData(n).slice(),
    );
    for (const [n, at] of (times ?? []).entries()) {
      const [l = Number.NaN, r = Number.NaN, counted = 0] = [left?.[n], right?.[n], count?.[n]];
      const sample = { left: l, right: r, context };
      if (at === 0) early.push({ ...sample, count: counted });
      else heard.push(...timed(early.splice(0), at, counted), { at, ...sample });
    }
  };
  connect.call(sides, lines, 0, 0);
  connect.call(sides, lines, 1, 1);
  connect.call(clock, lines, 0, 2);
  connect.call(counter, lines, 0, 3);
  connect.call(lines, recorder);
  connect.call(recorder, context.destination);
  return sides;
}

function counterOf(context: AudioContext): AudioBufferSourceNode {
  const buffer = context.createBuffer(1, counts, context.sampleRate);
  buffer.copyToChannel(
    Float32Array.from({ length: counts }, (_, n) => n),
    0,
  );
  const counter = context.createBufferSource();
  counter.buffer = buffer;
  counter.loop = true;
  return counter;
}

/** The times of what came before the clock began: so many samples before what comes next. */
const timed = (early: readonly Early[], next: Seconds, count: number): Heard[] =>
  early.map(({ count: own, ...one }) => ({
    ...one,
    at: next - ((count - own + counts) % counts) / one.context.sampleRate,
  }));

/** Level in dBFS of what was heard on one side from one time up to another. */
export function levelOf(
  heard: Heard[],
  side: "left" | "right",
  from: Seconds,
  to: Seconds,
): number {
  const samples = heard.filter(({ at }) => at >= from && at < to).map((it) => it[side]);
  return 10 * Math.log10(samples.reduce((sum, x) => sum + x * x, 0) / samples.length);
}

/** Greatest sample of either side, full scale 1. */
export const peakOf = (heard: Heard[]): number =>
  heard.reduce((most, { left, right }) => Math.max(most, Math.abs(left), Math.abs(right)), 0);

/** Times of the first and last sample that was not silence. */
export function soundingSpan(heard: Heard[]): { first: Seconds; last: Seconds } | undefined {
  const sounding = heard.filter(({ left, right }) => Math.abs(left) + Math.abs(right) > 1e-6);
  const [first, last] = [sounding[0], sounding.at(-1)];
  return first && last && { first: first.at, last: last.at };
}

/** Whether no block was lost: every sample follows the one before it by one period. */
export const isGapless = (heard: Heard[]): boolean =>
  heard.every(({ at }, n) => n === 0 || Math.abs(at - (heard[n - 1]?.at ?? 0)) < 0.001);
