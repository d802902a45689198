import { spawnSync } from "node:child_process";
import {
  type Circuit,
  type Element,
  earth,
  type Node,
  type Source,
} from "#core/circuit/circuit.ts";
import type { Feed, Stage } from "#core/level/stages.ts";
import { passedAt } from "#core/level/taper.ts";
import { audioBand } from "#core/level/volts.ts";
import { busesOf } from "#core/rig/circuit-step.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import { stretchInto } from "#core/rig/stretch.ts";
import { fromDecibels } from "#core/units/decibels.ts";

/*
 * A whole way to a pair of ears as the simulator's own noise analysis takes it: every resistor of every stretch makes its own thermal noise, gains are
 * controlled sources, and the noise of a box is that of a resistor of the right size behind a gain of one.
 */

const program = "ngspice";
const kelvin = 290;
const boltzmann = 1.380649e-23;

/** The resistor whose thermal noise has the density of so many microvolts over the audio band. */
const ohmsFor = (microvolts: number): number =>
  (microvolts * 1e-6) ** 2 / audioBand / (4 * boltzmann * kelvin);

/** The node of a signal that a circuit is driven by; none of what is not driven here. */
type Bus = (signal: string) => string | undefined;

class Deck {
  readonly lines: string[] = [];
  readonly #nodes = new Map<string, string>([[earth, "0"]]);

  node(name: Node): string {
    const known = this.#nodes.get(name) ?? `n${this.#nodes.size}`;
    this.#nodes.set(name, known);
    return known;
  }

  line(letter: string, ...rest: readonly (string | number)[]): void {
    this.lines.push([`${letter}${this.lines.length}`, ...rest].join(" "));
  }

  /** A fresh node that has a noise of its own over another. */
  noisy(from: string, microvolts: number): string {
    const [noise, sum] = [this.fresh(), this.fresh()];
    this.line("r", noise, 0, ohmsFor(microvolts));
    this.line("e", sum, from, noise, 0, 1);
    return sum;
  }

  fresh(): string {
    return this.node(`fresh ${this.#nodes.size}`);
  }

  circuit(circuit: Circuit, bus: Bus): void {
    for (const one of circuit) this.#element(one, bus);
  }

  #element(one: Element, bus: Bus): void {
    const [a, b] = [this.node(one.a), this.node(one.b)];
    if (one.kind === "resistor") this.line("r", a, b, one.ohms);
    if (one.kind === "capacitor") this.line("c", a, b, one.farads);
    if (one.kind === "source") this.line("r", a, this.#driven(b, one, bus), one.ohms);
  }

  /** A voltage over a node that the signals make; the mains are quiet here. */
  #driven(from: string, { drive }: Source, bus: Bus): string {
    let below = from;
    for (const [signal, gain] of Object.entries(drive)) {
      const node = bus(signal);
      if (node === undefined) continue;
      const above = this.fresh();
      this.line("e", above, below, node, 0, gain);
      below = above;
    }
    return below;
  }
}

/** The signals of a stage from what it takes in, each a node against earth, as the knob, the gains and the two noises make them. */
function signalsOf(deck: Deck, stage: Stage, taken: readonly string[]): readonly string[] {
  const { gain, "input noise": before, "output noise": after } = stage.figures;
  const by = fromDecibels(gain.typical) * (stage.knob === undefined ? 1 : passedAt(stage.knob));
  const inner = taken.map((node) => deck.noisy(node, before.typical));
  return stage.inside.map((row) => {
    let sum = "0";
    for (const [at, { re }] of row.entries()) {
      const above = deck.fresh();
      deck.line("e", above, sum, inner[at] ?? "0", 0, re * by);
      sum = above;
    }
    return deck.noisy(sum, after.typical);
  });
}

/** What the simulator says of the left driver at 1 kHz: its volts for one volt on the left of the programme, and its noise in volts in a hertz. */
export function simulatedNoise(
  rig: BuiltRig,
  feed: Feed,
): { readonly gain: number; readonly noise: number } {
  const deck = new Deck();
  let taken: readonly string[] = ["left", "right"];
  let probe: readonly [string, string] = ["0", "0"];
  for (const [at, stage] of feed.stages.entries()) {
    const next = feed.stages[at + 1]?.part ?? feed.worn.part;
    const signals = signalsOf(deck, stage, taken);
    const buses = busesOf(rig, stage.part);
    const named = (node: Node) => (node === earth ? node : `${at}: ${node}`);
    const circuit = stretchInto(rig, next, []).circuit.map((one) => ({
      ...one,
      a: named(one.a),
      b: named(one.b),
    }));
    deck.circuit(circuit, (signal) => signals[buses.indexOf(signal)]);
    const takes = rig
      .part(next)
      .takes.map(
        ({ plus, minus }) =>
          [deck.node(named(`${next}: ${plus}`)), deck.node(named(`${next}: ${minus}`))] as const,
      );
    probe = takes[0] ?? probe;
    taken = takes.map(([plus, minus]) => {
      const node = deck.fresh();
      deck.line("e", node, 0, plus, minus, 1);
      return node;
    });
  }
  return run(deck.lines, probe);
}

function run(lines: readonly string[], [plus, minus]: readonly [string, string]) {
  const input = [
    "* level and noise of a way",
    `.options temp=${kelvin - 273.15}`,
    "vin left 0 dc 0 ac 1",
    "vother right 0 dc 0",
    ...lines,
    ".control",
    "ac dec 1 1000 10000",
    `print mag(v(${plus})-v(${minus}))`,
    `noise v(${plus},${minus}) vin dec 1 1000 10000`,
    "setplot noise1",
    "print onoise_spectrum",
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
  const { stdout, stderr } = spawnSync(program, ["-b"], { input, encoding: "utf8" });
  const at = (what: RegExp): number => {
    const table = stdout.slice(stdout.search(what));
    const value = /^0\s+1\.0+e\+03\s+(\S+)/m.exec(table)?.[1];
    if (value === undefined) throw new Error(`no answer: ${stderr}\n${stdout}`);
    return Number(value);
  };
  return { gain: at(/mag\(/), noise: at(/onoise_spectrum/) };
}
