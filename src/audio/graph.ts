import type {
  IAudioBufferSourceNode,
  IAudioContext,
  IAudioNode,
  IAudioParam,
  IBaseAudioContext,
  IGainNode,
  IOfflineAudioContext,
} from "standardized-audio-context";
import type { Admitted } from "#core/signals/admit.ts";
import { peakCap } from "#core/signals/caps.ts";
import { fromDecibels } from "#core/units/decibels.ts";
import type { Shares } from "./blend.ts";
import type { EarMatrix } from "./ear-matrix.ts";

/** A context that plays, or one that renders the same to samples. */
export type Context = IAudioContext | IOfflineAudioContext;

export interface Graph<T extends Context> {
  /** Not started yet. */
  readonly source: IAudioBufferSourceNode<T>;
  /** Gain of the samples; see `gainFor`. */
  readonly level: IAudioParam;
  /** One while it sounds; only ever goes to zero. */
  readonly fade: IAudioParam;
  /** Gains of the two versions of an audition, to begin with the first alone; undefined for one sound. */
  readonly shares: Shares | undefined;
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
  /** Begin again at the end, to the sample. */
  readonly loop?: boolean;
  /** Gain to begin with. */
  readonly gain: number;
}

/** No sample leaves greater than this, full scale 1. */
const cap = fromDecibels(peakCap);

/**
 * Gate two, the only way to an output: samples, ears, level, fade, and a shaper that caps whatever comes, exactly
 * linear below the cap. The same function serves the context that plays and the one that proves it.
 */
export function buildGraph<T extends Context>(
  context: IBaseAudioContext<T>,
  options: GraphOptions,
): Graph<T> {
  const source = context.createBufferSource();
  source.buffer = bufferOf(context, options);
  source.loop = options.loop ?? false;
  const level = gainNode(context, options.gain);
  const fade = gainNode(context, 1);
  const toShaper = gainNode(context, 1 / cap);
  const shaper = discrete(context.createWaveShaper(), 2);
  shaper.curve = new Float32Array([-cap, 0, cap]);
  const shares = connectVoices(context, source, options, level);
  level.connect(fade);
  fade.connect(toShaper);
  toShaper.connect(shaper);
  shaper.connect(context.destination);
  return { source, level: level.gain, fade: fade.gain, shares, release: () => shaper.disconnect() };
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

function splitter<T extends Context>(
  context: IBaseAudioContext<T>,
  source: IAudioNode<T>,
  channels: number,
): IAudioNode<T> {
  const sides = context.createChannelSplitter(channels);
  source.connect(sides);
  return sides;
}

/** From two channels, the first of them given: a gain for each entry that is not zero, and a merger. */
function listen<T extends Context>(
  context: IBaseAudioContext<T>,
  channels: IAudioNode<T>,
  first: number,
  { ll, lr, rl, rr }: EarMatrix,
): IAudioNode<T> {
  const ears = context.createChannelMerger(2);
  const entries: [gain: number, channel: number, ear: number][] = [
    [ll, first, 0],
    [lr, first + 1, 0],
    [rl, first, 1],
    [rr, first + 1, 1],
  ];
  for (const [gain, channel, ear] of entries) {
    if (gain === 0) continue;
    const entry = gainNode(context, gain, 1);
    channels.connect(entry, channel);
    entry.connect(ears, 0, ear);
  }
  return ears;
}

function gainNode<T extends Context>(
  context: IBaseAudioContext<T>,
  gain: number,
  channels = 2,
): IGainNode<T> {
  const node = discrete(context.createGain(), channels);
  node.gain.value = gain;
  return node;
}

/** A browser that mixes channels up or down would make one side of two: never. */
function discrete<N extends IAudioNode<Context>>(node: N, channels: number): N {
  node.channelCount = channels;
  node.channelCountMode = "explicit";
  node.channelInterpretation = "discrete";
  return node;
}
