import type {
  IAudioBufferSourceNode,
  IAudioNode,
  IAudioParam,
  IBaseAudioContext,
} from "standardized-audio-context";
import type { Admitted } from "#core/signals/admit.ts";
import { peakCap } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Decibels } from "#core/units/units.ts";
import { type Sides, sharesOf } from "./balance.ts";
import type { Shares } from "./blend.ts";
import type { EarMatrix } from "./ear-matrix.ts";
import { type Context, discrete, gainNode, listen, splitter } from "./nodes.ts";

export interface Graph<T extends Context> {
  /** Not started yet. */
  readonly source: IAudioBufferSourceNode<T>;
  /** Gain of the samples; see `gainFor`. */
  readonly level: IAudioParam;
  /** One while it sounds; only ever goes to zero. */
  readonly fade: IAudioParam;
  /** One until it must be silent, after the fade. */
  readonly end: IAudioParam;
  /** Gains of the two versions of an audition, to begin with the first alone; undefined for one sound. */
  readonly shares: Shares | undefined;
  /** Gains of both sides before anything they are heard through; undefined for a sound without a balance. */
  readonly sides: Sides | undefined;
  /** Takes the graph off the output. */
  readonly release: () => void;
}

/** A sound, and what it is heard through. */
export interface Voice {
  readonly sound: Admitted;
  /** Play it as a feed with this matrix would sound. Left out: as it is. */
  readonly through?: EarMatrix | undefined;
}

export interface GraphOptions extends Voice {
  /** Another of the same length and rate, in step with the first because it comes from the same source. */
  readonly instead?: Voice | undefined;
  /** What is played over and over once it is reached; left out, it is played once. */
  readonly loop?: Loop | undefined;
  /** By how much the right is louder than the left to begin with, and that it may be changed; left out, it may not. */
  readonly balance?: Decibels | undefined;
  /** Gain to begin with. */
  readonly gain: number;
  /** The first of the two channels of the output that get left and right, counted from nought; nought unless given. */
  readonly first?: number;
}

/** Samples that are played over and over: from one up to another, which is not played. */
export interface Loop {
  readonly from: number;
  readonly to: number;
}

/** No sample leaves greater than this, full scale 1. */
const cap = fromDecibels(peakCap);

/**
 * Gate two, the only way to an output: samples, balance, ears, level, fade, end, and a shaper that caps whatever comes, exactly
 * linear below the cap; then the pair of channels it is for. The same function serves the context that plays and the one
 * that proves it.
 */
export function buildGraph<T extends Context>(
  context: IBaseAudioContext<T>,
  options: GraphOptions,
): Graph<T> {
  const source = sourceOf(context, options);
  const level = gainNode(context, options.gain);
  const [fade, end] = [gainNode(context, 1), gainNode(context, 1)];
  const toShaper = gainNode(context, 1 / cap);
  const shaper = discrete(context.createWaveShaper(), 2);
  shaper.curve = new Float32Array([-cap, 0, cap]);
  const { from, sides } = balanced(context, source, options.balance);
  const shares = connectVoices(context, from, options, level);
  level.connect(fade);
  fade.connect(end);
  end.connect(toShaper);
  toShaper.connect(shaper);
  const last = onPair(context, shaper, options.first ?? 0);
  last.connect(context.destination);
  const release = () => last.disconnect();
  const gains = { level: level.gain, fade: fade.gain, end: end.gain };
  return { source, ...gains, shares, sides, release };
}

function sourceOf<T extends Context>(
  context: IBaseAudioContext<T>,
  options: GraphOptions,
): IAudioBufferSourceNode<T> {
  const source = context.createBufferSource();
  source.buffer = bufferOf(context, options);
  if (options.loop === undefined) return source;
  const { rate } = options.sound;
  source.loop = true;
  source.loopStart = options.loop.from / rate;
  source.loopEnd = options.loop.to / rate;
  return source;
}

/** The source with a gain on each side, where there is a balance to be kept. */
function balanced<T extends Context>(
  context: IBaseAudioContext<T>,
  source: IAudioNode<T>,
  balance: Decibels | undefined,
): { readonly from: IAudioNode<T>; readonly sides: Sides | undefined } {
  if (balance === undefined) return { from: source, sides: undefined };
  const shares = sharesOf(balance);
  const apart = splitter(context, source, 2);
  const both = context.createChannelMerger(2);
  const side = (gain: number, channel: number) => {
    const node = gainNode(context, gain, 1);
    apart.connect(node, channel);
    node.connect(both, 0, channel);
    return node.gain;
  };
  return { from: both, sides: { left: side(shares.left, 0), right: side(shares.right, 1) } };
}

/** Both sides on the pair of channels that begins with the first; the others get nothing. */
function onPair<T extends Context>(
  context: IBaseAudioContext<T>,
  node: IAudioNode<T>,
  first: number,
): IAudioNode<T> {
  const { channelCount } = context.destination;
  if (channelCount <= 2) return node;
  const apart = splitter(context, node, 2);
  const all = context.createChannelMerger(channelCount);
  apart.connect(all, 0, first);
  apart.connect(all, 1, first + 1);
  return all;
}

/** The samples of all voices: two channels each. */
function bufferOf<T extends Context>(
  context: IBaseAudioContext<T>,
  { sound, instead }: GraphOptions,
) {
  const sounds = instead ? [sound, instead.sound] : [sound];
  const buffer = context.createBuffer(2 * sounds.length, sound.left.length, sound.rate);
  for (const [at, { left, right }] of sounds.entries()) {
    buffer.copyToChannel(left, 2 * at);
    buffer.copyToChannel(right, 2 * at + 1);
  }
  return buffer;
}

/** Leads the voices from the source to the level; two of them by a gain each. */
function connectVoices<T extends Context>(
  context: IBaseAudioContext<T>,
  source: IAudioNode<T>,
  { through, instead }: GraphOptions,
  level: IAudioNode<T>,
): Shares | undefined {
  if (instead === undefined) {
    const ears = through ? listen(context, splitter(context, source, 2), 0, through) : source;
    ears.connect(level);
    return undefined;
  }
  const channels = splitter(context, source, 4);
  const share = (first: number, matrix: EarMatrix | undefined, gain: number) => {
    const node = gainNode(context, gain);
    listen(context, channels, first, matrix ?? asItIs).connect(node);
    node.connect(level);
    return node.gain;
  };
  return { healthy: share(0, through, 1), faulty: share(2, instead.through, 0) };
}

const asItIs: EarMatrix = { ll: 1, lr: 0, rl: 0, rr: 1 };
