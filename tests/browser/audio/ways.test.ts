import { describe, expect, test } from "vitest";
import { lean, sharesOf } from "#audio/balance.ts";
import { buildGraph, type GraphOptions } from "#audio/graph.ts";
import { type Admitted, admit } from "#core/signals/admit.ts";
import { type SignalName, signalNames, signals } from "#core/signals/catalogue.ts";
import { render } from "#core/signals/render.ts";
import { channelsOf } from "./offline.ts";

const rate = 48_000;
/** Half a step of a 16-bit converter, full scale 1. */
const halfStep = 2 ** -16;

function admitted(name: SignalName): Admitted {
  const sound = admit(render(name, rate, 1));
  if ("refused" in sound) throw new Error(sound.refused);
  return sound;
}

/** Every channel of the output for so many seconds. */
async function output(
  options: Omit<GraphOptions, "gain">,
  { seconds, channels = 2 }: { readonly seconds: number; readonly channels?: number },
  before: (graph: ReturnType<typeof buildGraph>) => void = () => {},
) {
  const length = Math.round(seconds * rate);
  return channelsOf({ numberOfChannels: channels, length, sampleRate: rate }, (context) => {
    const graph = buildGraph(context, { ...options, gain: 1 });
    before(graph);
    graph.source.start();
  });
}

const farthest = (one: Float32Array, other: (n: number) => number): number =>
  one.reduce((most, sample, n) => Math.max(most, Math.abs(sample - other(n))), 0);

describe("the pair of channels", () => {
  test.for([0, 2, 4])("that begins with channel %d alone gets anything", async (first) => {
    const sound = admitted("burst-pair");
    const heard = await output({ sound, first }, { seconds: 1.4, channels: 6 });
    for (const [n, channel] of heard.entries()) {
      const side = [sound.left, sound.right][n - first];
      if (side === undefined) expect(farthest(channel, () => 0)).toBe(0);
      else expect(farthest(channel, (at) => side[at] ?? 0)).toBeLessThan(halfStep / 100);
    }
  });
});

describe("a loop", () => {
  test.for(signalNames)("of %s goes on without a seam", async (name) => {
    const sound = admitted(name);
    const { left, right } = sound;
    const loop = signals[name].loop?.(rate) ?? { from: 0, to: left.length };
    const round = loop.to - loop.from;
    const at = (n: number) => (n < loop.to ? n : loop.from + ((n - loop.to) % round));
    const seconds = Math.min(12, (loop.to + 1.5 * round) / rate);
    const [l, r] = await output({ sound, loop }, { seconds });
    expect(farthest(l ?? left, (n) => left[at(n)] ?? 0)).toBeLessThan(halfStep / 100);
    expect(farthest(r ?? right, (n) => right[at(n)] ?? 0)).toBeLessThan(halfStep / 100);
  });
});

describe("a balance", () => {
  test.for([-12, -3, 0, 1, 6])("of %d dB raises neither side", async (balance) => {
    const sound = admitted("balance-tone");
    const [l = sound.left, r = sound.right] = await output({ sound, balance }, { seconds: 1 });
    const { left, right } = sharesOf(balance);
    expect(Math.max(left, right)).toBe(1);
    expect(20 * Math.log10(right / left)).toBeCloseTo(balance, 9);
    expect(farthest(l, (n) => left * (sound.left[n] ?? 0))).toBeLessThan(halfStep / 100);
    expect(farthest(r, (n) => right * (sound.right[n] ?? 0))).toBeLessThan(halfStep / 100);
  });

  test("is changed without a step, however fast", async () => {
    const level = 0.1;
    const flat = new Float32Array(rate / 2).fill(level); // past gate one, so that only the gain moves
    const sound = { left: flat, right: flat, rate } as unknown as Admitted;
    const [l = flat] = await output({ sound, balance: 0 }, { seconds: 0.4 }, ({ sides }) => {
      if (sides === undefined) throw new Error("no sides");
      const changes = [6, 12, -12, 3, 12];
      for (const [n, balance] of changes.entries()) lean(sides, balance, 0.1 + n * 0.011);
    });
    const steps = l.map((sample, n) => Math.abs(sample - (l[n - 1] ?? sample)));
    // Fastest where it goes down by 12 dB at once: its time constant is 5 ms.
    expect(Math.max(...steps)).toBeLessThan(level / (0.005 * rate));
    expect((l.at(-1) ?? 0) / level).toBeCloseTo(sharesOf(12).left, 4);
  });
});
