import { spawnSync } from "node:child_process";
import { type Complex, subtract, zero } from "#core/units/complex.ts";
import type { Matrix } from "#core/units/matrix.ts";
import type { Hertz } from "#core/units/units.ts";
import { type Block, copied, deckOf } from "./deck.ts";

/** A circuit simulator that the system has, or has not; no package brings it. */
const program = "ngspice";

/** Whether it is on the path. */
export const installed = (): boolean => spawnSync(program, ["--version"]).error === undefined;

/** As many blocks as a deck is given: beyond this the simulator takes longer a block. */
const aDeck = 20;

/** What the simulator says of each block: rows the wanted voltages, columns the signals. Blocks of one text are solved once. */
export function simulate(blocks: readonly Block[], signals: number, at: Hertz): Matrix[] {
  const texts = blocks.map((block) => JSON.stringify(block));
  const unique = new Map(texts.map((text, index) => [text, blocks[index] as Block]));
  const answers = new Map<string, Matrix>();
  const all = [...unique];
  for (let start = 0; start < all.length; start += aDeck) {
    const some = all.slice(start, start + aDeck);
    const matrices = oneDeck(
      some.map(([, block]) => block),
      signals,
      at,
    );
    for (const [index, [text]] of some.entries()) answers.set(text, matrices[index] ?? []);
  }
  return texts.map((text) => answers.get(text) ?? []);
}

function oneDeck(blocks: readonly Block[], signals: number, at: Hertz): Matrix[] {
  const input = deckOf(blocks, signals, at);
  const { stdout, stderr, error } = spawnSync(program, ["-b"], {
    input,
    encoding: "utf8",
    maxBuffer: 2 ** 28,
  });
  if (error !== undefined) throw error;
  const runs = stdout
    .split(/^run \d+$/m)
    .slice(1)
    .map(voltages);
  if (runs.length !== signals || runs.some(({ size }) => size === 0))
    throw new Error(`ngspice gave ${runs.length} answers of ${signals}:\n${stderr}`);
  return blocks.map(({ wanted }, copy) =>
    wanted.map(({ plus, minus }) =>
      runs.map((run) => subtract(read(run, copied(plus, copy)), read(run, copied(minus, copy)))),
    ),
  );
}

/** The lines `v(node) = real,imaginary`. */
const voltages = (text: string): ReadonlyMap<string, Complex> =>
  new Map(
    [...text.matchAll(/^v\((\S+)\) = (\S+),(\S+)$/gm)].map(([, node = "", re, im]) => [
      node,
      { re: Number(re), im: Number(im) },
    ]),
  );

function read(run: ReadonlyMap<string, Complex>, node: string): Complex {
  if (node === "0") return zero;
  const volts = run.get(node);
  if (volts === undefined || !Number.isFinite(volts.re + volts.im))
    throw new Error(`ngspice printed no voltage of ${node}`);
  return volts;
}
