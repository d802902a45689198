import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Complex, subtract, zero } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Block, copied, deckOf, fileOf } from "./deck.ts";

/** A circuit simulator that the system has, or has not; no package brings it. */
const program = "ngspice";

/** Whether it is on the path. */
export const installed = (): boolean => spawnSync(program, ["--version"]).error === undefined;

/** As many lines as a deck is given: beyond this the simulator takes longer for each. */
const aDeck = 2000;

/**
 * What the simulator says of each block at each frequency: rows the wanted voltages, columns the signals. Blocks of one text are solved
 * once. Frequencies go up by decades.
 */
export function simulate(
  blocks: readonly Block[],
  signals: number,
  frequencies: readonly Hertz[],
): Matrix[][] {
  const texts = blocks.map((block) => JSON.stringify(block));
  const unique = [...new Map(texts.map((text, index) => [text, blocks[index] as Block]))];
  const answers = new Map<string, Matrix[]>();
  for (const some of decks(unique)) {
    const runs = run(
      some.map(([, block]) => block),
      signals,
      frequencies,
    );
    for (const [copy, [text, { wanted }]] of some.entries())
      answers.set(
        text,
        frequencies.map((_, at) =>
          wanted.map(({ plus, minus }) =>
            runs.map((read) =>
              subtract(read(copied(plus, copy), at), read(copied(minus, copy), at)),
            ),
          ),
        ),
      );
  }
  return texts.map((text) => answers.get(text) ?? []);
}

/** Blocks in decks of about one size. */
function decks(
  blocks: readonly (readonly [string, Block])[],
): readonly (readonly (readonly [string, Block])[])[] {
  let lines = 0;
  const numbered = blocks.map((one) => {
    lines += one[1].lines.length;
    return [Math.floor(lines / aDeck), one] as const;
  });
  return [...new Set(numbered.map(([deck]) => deck))].map((deck) =>
    numbered.filter(([at]) => at === deck).map(([, one]) => one),
  );
}

/** The voltage of a node at one of the frequencies, by its place. Throws on a node that the simulator said nothing of. */
type Read = (node: string, at: number) => Complex;

/** Starts the simulator once with all blocks. One reader for each signal. Throws what it complains of. */
export function run(
  blocks: readonly Block[],
  signals: number,
  frequencies: readonly Hertz[],
): Read[] {
  const cwd = mkdtempSync(join(tmpdir(), "circuits-"));
  try {
    const input = deckOf(blocks, signals, frequencies);
    const { stderr, error } = spawnSync(program, ["-b"], { input, encoding: "utf8", cwd });
    if (error !== undefined) throw error;
    if (/error/i.test(stderr)) throw new Error(stderr);
    return Array.from({ length: signals }, (_, signal) =>
      readerOf(readFileSync(join(cwd, fileOf(signal))), frequencies.length),
    );
  } finally {
    rmSync(cwd, { recursive: true });
  }
}

/** A file of voltages: a head that names them, then for each frequency all of them, each as a real and an imaginary double. */
function readerOf(file: Buffer, frequencies: number): Read {
  const mark = "Binary:\n";
  const start = file.indexOf(mark) + mark.length;
  const head = file.toString("latin1", 0, start);
  const names = [...head.matchAll(/^\t(\d+)\tv\((\S+)\)\t/gm)];
  const places = new Map(names.map(([, place, node = ""]) => [node, Number(place)]));
  const variables = Number(/^No\. Variables: (\d+)/m.exec(head)?.[1]);
  if (file.length !== start + 16 * variables * frequencies)
    throw new Error(`ngspice wrote ${file.length} bytes for ${variables} voltages:\n${head}`);
  return (node, at) => {
    if (node === "0") return zero;
    const place = places.get(node);
    if (place === undefined) throw new Error(`ngspice wrote no voltage of ${node}`);
    const from = start + 16 * (at * variables + place);
    const volts = { re: file.readDoubleLE(from), im: file.readDoubleLE(from + 8) };
    if (!Number.isFinite(volts.re + volts.im)) throw new Error(`${node} has no finite voltage`);
    return volts;
  };
}
