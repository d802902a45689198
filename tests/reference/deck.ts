import { type Circuit, type Element, earth, type Node } from "#core/circuit/circuit.ts";
import type { Probe } from "#core/parts/part.ts";
import type { Hertz } from "#core/units/units.ts";

/**
 * Some lines of a deck that are to be solved together, and the voltages wanted of them. A `@` at the end of a name stands for the
 * number of the copy, so that two circuits that differ in names alone are one text, solved once.
 */
export interface Block {
  readonly lines: readonly string[];
  readonly wanted: readonly Probe[];
}

/** The nodes that carry one volt of each signal in its run, shared by all blocks. */
export const signalNode = (signal: number): string => `s${signal}`;

/** Writes circuits under short names, in the order in which they are met. */
export function blockWriter() {
  const lines: string[] = [];
  const written = new Set<string>();
  const nodes = new Map<Node, string>();
  const inner = () => `n${lines.length}_${nodes.size}@`;

  const node = (name: Node): string => {
    if (name === earth) return "0";
    const known = nodes.get(name) ?? `n${nodes.size}@`;
    nodes.set(name, known);
    return known;
  };
  const line = (letter: string, ...rest: readonly (string | number)[]) =>
    lines.push([`${letter}${lines.length}@`, ...rest].join(" "));

  /** A voltage over `from` that is a sum of others, each of `plus` over `minus` times a gain. Answers where it ends. */
  const sum = (from: string, terms: readonly (readonly [Probe, number])[]): string =>
    terms.reduce((below, [{ plus, minus }, gain]) => {
      const above = inner();
      line("e", above, below, plus, minus, gain);
      return above;
    }, from);

  /** One element. `bus` says where the voltage of each signal that drives a source stands. */
  const element = (one: Element, bus: (signal: string) => string): void => {
    const [a, b] = [node(one.a), node(one.b)];
    if (one.kind === "resistor") line("r", a, b, one.ohms);
    if (one.kind === "capacitor") line("c", a, b, one.farads);
    if (one.kind !== "source") return;
    const driving = Object.entries(one.drive).filter(([, gain]) => gain !== 0);
    const terms = driving.map(
      ([signal, gain]) => [{ plus: bus(signal), minus: "0" }, gain] as const,
    );
    line("r", a, sum(b, terms), one.ohms);
  };

  return {
    node,
    sum,
    /** What stands in it already, as a box's own chassis between two circuits, is not written twice. */
    circuit: (circuit: Circuit, bus: (signal: string) => string) => {
      const fresh = circuit.filter(({ name }) => !written.has(name));
      for (const one of fresh) element(one, bus);
      for (const { name } of fresh) written.add(name);
    },
    block: (wanted: readonly Probe[]): Block => ({ lines: [...lines], wanted }),
  };
}

/** How many vectors one print command gets. */
const atOnce = 40;

/** A deck with all blocks side by side, and one alternating-current run a signal: one volt of it, none of the others. */
export function deckOf(blocks: readonly Block[], signals: number, at: Hertz): string {
  const names = Array.from({ length: signals }, (_, signal) => signalNode(signal));
  const wanted = [
    ...new Set(
      blocks.flatMap((block, copy) =>
        block.wanted.flatMap(({ plus, minus }) => [copied(plus, copy), copied(minus, copy)]),
      ),
    ),
  ].filter((name) => name !== "0");
  const prints = Array.from({ length: Math.ceil(wanted.length / atOnce) }, (_, index) =>
    [
      "print",
      ...wanted.slice(index * atOnce, (index + 1) * atOnce).map((name) => `v(${name})`),
    ].join(" "),
  );
  const runs = names.flatMap((name, run) => [
    ...names.map((other) => `alter @v${other}[acmag] = ${other === name ? 1 : 0}`),
    `ac lin 1 ${at} ${at}`,
    `echo run ${run}`,
    ...prints,
  ]);
  return [
    "* circuits side by side",
    ".options noopac",
    ...names.map((name) => `v${name} ${name} 0 dc 0 ac 1`),
    ...blocks.flatMap(({ lines }, copy) => lines.map((line) => copied(line, copy))),
    ".control",
    "set numdgt=12",
    ...runs,
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
}

export const copied = (text: string, copy: number): string => text.replaceAll("@", `x${copy}`);
