import { createOutputs } from "#audio/outputs.ts";
import type { PlayHow } from "#audio/programme.ts";
import { createPlayer } from "#audio/web-player.ts";
import type { SignalName } from "#core/signals/catalogue.ts";

/*
 * The real player behind three buttons, and what a press of them cost here. Driven from outside, where the device is listened to.
 */

/** Times on the wall clock in milliseconds. */
interface Press {
  readonly pressed: number;
  /** When the source was started; undefined until it was. */
  started?: number;
}

/** Both: as the browser states them, milliseconds. */
interface Latency {
  readonly base: number;
  readonly output: number;
}

const player = createPlayer();
player.warm();

let what: readonly [name: SignalName, seed: number, how: PlayHow] = ["left-ident", 1, {}];
let context: AudioContext | undefined;
let ended: Promise<unknown> = Promise.resolve();
const presses: Press[] = [];

const clock = () => performance.timeOrigin + performance.now();

const { start } = AudioBufferSourceNode.prototype;
AudioBufferSourceNode.prototype.start = function (...args) {
  const press = presses.at(-1);
  if (press) press.started ??= clock();
  context = this.context as AudioContext;
  start.apply(this, args);
};

const onPress = (id: string, press: (at: number) => void) =>
  document
    .getElementById(id)
    ?.addEventListener("click", ({ timeStamp }) => press(performance.timeOrigin + timeStamp));

onPress("play", (pressed) => {
  presses.push({ pressed });
  ended = player.play(...what);
});
onPress("silence", (pressed) => {
  presses.push({ pressed });
  player.silence();
});
onPress("louder", player.louder);

const latency = (): Latency => ({
  base: 1000 * (context?.baseLatency ?? Number.NaN),
  output: 1000 * (context?.outputLatency ?? Number.NaN),
});

/** Plays the same samples over and over with the least there is: a file in a media element. */
function playFile(wav: string): Promise<void> {
  const element = new Audio(wav);
  element.loop = true;
  document.body.append(element);
  return element.play();
}

const stage = {
  player,
  outputs: createOutputs(),
  presses,
  clock,
  latency,
  rate: () => context?.sampleRate,
  time: () => context?.currentTime,
  ended: () => ended,
  choose: (...next: typeof what) => {
    what = next;
    player.prepare(next[0], next[1]);
  },
  playFile,
};
Object.assign(globalThis, { stage });
