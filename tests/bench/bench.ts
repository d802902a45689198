import { followedOf } from "./followed.ts";
import { hardenedOf } from "./hardened.ts";
import { optimumOf } from "./optimum.ts";
import { alternativesOf, calibrationOf, scoresOf } from "./scores.ts";
import { type Batch, type Compared, walksOf } from "./seeded-walks.ts";
import { sizes, speedWith } from "./speed.ts";
import { markdown, reliabilityTable, scoresTable } from "./tables.ts";

/** `npm run bench -- [walks of each kind] [most positions] [rigs against the optimum]`: the tables of the README, in Markdown. */
const [count = "100", most = "64", rigs = "200"] = process.argv.slice(2);
const walks = Number(count);
const positions = Number(most);
if (!(walks > 0 && positions > 0)) throw new RangeError("numbers above zero are needed");

/** Walks of one kind, with the name that they bear in a table. */
type Named = readonly [name: string, walks: readonly Compared[]];

function walksNamed(name: string, batch: Omit<Batch, "positions">): Named {
  console.error(`${name} …`);
  return [name, [...walksOf({ ...batch, positions }, 0, walks)]];
}

/** Seconds of each policy, for walks on the same cases. */
const rows: readonly (readonly [string, (walks: readonly Compared[]) => number])[] = [
  ["this program, to a working rig", (some) => scoresOf(some).toWorking],
  ["fixed checklist, then repairs by odds", (some) => alternativesOf(some).listToWorking],
  ["swapping parts from the far end", (some) => alternativesOf(some).swapToWorking],
  ["this program, to its verdict", (some) => scoresOf(some).seconds],
  ["fixed checklist, to its end", (some) => alternativesOf(some).listVerdict],
  ["entropy bound, to the group", (some) => alternativesOf(some).bound],
];

function printWalks(): void {
  const alternatives = true;
  const one = walksNamed("one fault, slips 5 %", { plant: "single", slips: 0.05, alternatives });
  const two = walksNamed("two faults, slips 5 %", { plant: "double", slips: 0.05, alternatives });
  const alone = { plant: "single", alternatives: false } as const;
  const all = [
    walksNamed("one fault, no slips", { ...alone, slips: 0 }),
    one,
    walksNamed("one fault, slips 10 %", { ...alone, slips: 0.1 }),
    two,
    walksNamed("nothing, slips 5 %", { plant: "nothing", slips: 0.05, alternatives: false }),
  ];
  console.log(scoresTable(all.map(([name, some]) => [name, scoresOf(some)])));
  const compared = rows.map(([name, value]) => [
    name,
    ...[one, two].map(([, some]) => value(some).toFixed(0)),
  ]);
  console.log(`\n${markdown(["seconds, slips 5 %", "one fault", "two faults"], compared)}`);
}

/** Somebody else comes in ten minutes, as everywhere here. */
const fallback = 600;

function printOptimum(): void {
  const seeds = Array.from({ length: Number(rigs) }, (_, at) => at + 1);
  const ratios = seeds.map(hardenedOf).map((problem) => {
    const least = optimumOf(problem, fallback);
    return least === 0 ? 1 : followedOf(problem, fallback) / least;
  });
  const mean = ratios.reduce((sum, one) => sum + one, 0) / ratios.length;
  const cells = [`${ratios.length}`, mean.toFixed(4), Math.max(...ratios).toFixed(4)];
  console.log(
    `\n${markdown(["against the optimum, no slips", "rigs", "mean", "worst"], [["ratio of seconds", ...cells]])}`,
  );
}

function printCalibration(): void {
  const two = [
    walksNamed("odds as assumed, slips 5 %", {
      plant: "by odds",
      slips: 0.05,
      alternatives: false,
    }),
    walksNamed("odds a factor of three off, slips 10 %", {
      plant: "odds off by three",
      slips: 0.1,
      alternatives: false,
    }),
  ];
  for (const [name, some] of two) {
    const { table, gap } = calibrationOf(some);
    console.log(`\n${name}:\n\n${reliabilityTable(table, gap)}`);
  }
}

function printSpeed(): void {
  speedWith(8);
  const cells = sizes
    .map(speedWith)
    .map(({ positions: size, ...times }) => [
      `${size} positions`,
      ...[times.middle, times.slowest, times.where, times.slice, times.table].map((ms) =>
        ms.toFixed(1),
      ),
    ]);
  const heads = ["milliseconds", "a press", "slowest", "where next", "longest slice", "table"];
  console.log(`\n${markdown(heads, cells)}`);
}

printWalks();
printOptimum();
printCalibration();
printSpeed();
