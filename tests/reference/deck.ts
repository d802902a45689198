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

export type Writer = ReturnType<typeof blockWriter>;

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

  /** One element. `bus` says where the voltage of each signal that drives a source stands; those it knows nothing of, as the mains, are at zero. */
  const element = (one: Element, bus: (signal: string) => string | undefined): void => {
    const [a, b] = [node(one.a), node(one.b)];
    if (one.kind === "resistor") line("r", a, b, one.ohms);
    if (one.kind === "capacitor") line("c", a, b, one.farads);
    if (one.kind !== "source") return;
    const driving = Object.entries(one.drive).filter(([, gain]) => gain !== 0);
    const terms = driving.flatMap(([signal, gain]) => {
      const plus = bus(signal);
      return plus === undefined ? [] : [[{ plus, minus: "0" }, gain] as const];
    });
    line("r", a, sum(b, terms), one.ohms);
  };

  return {
    node,
    sum,
    /** One line: a letter, then what stands behind its name. */
    line,
    /** A node that no circuit names. */
    inner,
    /** What stands in it already, as a box's own chassis between two circuits, is not written twice. */
    circuit: (circuit: Circuit, bus: (signal: string) => string | undefined) => {
      const fresh = circuit.filter(({ name }) => !written.has(name));
      for (const one of fresh) element(one, bus);
      for (const { name } of fresh) written.add(name);
    },
    block: (wanted: readonly Probe[]): Block => ({ lines: [...lines], wanted }),
  };
}

/** How many vectors one line names. */
const aLine = 40;

/**
 * A deck with all blocks side by side, and for every signal one alternating-current run: one volt of it, none of the others. Each run
 * leaves the wanted voltages at all frequencies, which must go up by decades, in a file named by `fileOf`.
 */
export function deckOf(
  blocks: readonly Block[],
  signals: number,
  frequencies: readonly Hertz[],
): string {
  const names = Array.from({ length: signals }, (_, signal) => signalNode(signal));
  const runs = names.flatMap((name, signal) => [
    ...names.map((other) => `alter @v${other}[acmag] = ${other === name ? 1 : 0}`),
    sweep(frequencies),
    `write ${fileOf(signal)}`,
    "destroy",
  ]);
  return [
    "* circuits side by side",
    ".options noopac",
    ...names.map((name) => `v${name} ${name} 0 dc 0 ac 1`),
    ...blocks.flatMap(({ lines }, copy) => lines.map((line) => copied(line, copy))),
    ...saved(blocks),
    ".control",
    "set filetype=binary",
    ...runs,
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
}

export const fileOf = (signal: number): string => `signal${signal}.raw`;

function sweep(frequencies: readonly Hertz[]): string {
  const [first, last] = [frequencies[0], frequencies.at(-1)];
  if (frequencies.some((at, index) => index > 0 && at !== 10 * (frequencies[index - 1] ?? at)))
    throw new Error(`${frequencies.join(", ")} Hz do not go up by decades`);
  return first === last ? `ac lin 1 ${first} ${first}` : `ac dec 1 ${first} ${last}`;
}

/** The simulator keeps these voltages and no other. */
function saved(blocks: readonly Block[]): readonly string[] {
  const wanted = [
    ...new Set(
      blocks.flatMap((block, copy) =>
        block.wanted.flatMap(({ plus, minus }) => [copied(plus, copy), copied(minus, copy)]),
      ),
    ),
  ].filter((name) => name !== "0");
  return Array.from({ length: Math.ceil(wanted.length / aLine) }, (_, index) =>
    [".save", ...wanted.slice(index * aLine, (index + 1) * aLine).map((name) => `v(${name})`)].join(
      " ",
    ),
  );
}

export const copied = (text: string, copy: number): string => text.replaceAll("@", `x${copy}`);
