import { calibrationOf, scoresOf } from "./scores.ts";
import { type Compared, type Plant, plants, walksOf } from "./seeded-walks.ts";
import { reliabilityTable, scoresTable } from "./tables.ts";

/** `npm run soak -- [walks] [first seed] [plant] [slips] [most positions]`: Ctrl-C prints what there is. A walk depends on its seed alone, so the next goes on. */
const [count = "20000", first = "0", what = "by odds", slips = "0.05", most = "64"] =
  process.argv.slice(2);
const plant: Plant | undefined = plants.find((one) => one === what);
if (plant === undefined) throw new RangeError(`${what}: one of ${plants.join(", ")}`);
const from = Number(first);
const to = from + Number(count);
if (!Number.isInteger(from) || !Number.isInteger(to))
  throw new RangeError(`${count} walks from ${first}: whole numbers`);

const walks: Compared[] = [];

function print(): void {
  const { table, gap } = calibrationOf(walks);
  console.log(scoresTable([[`${plant}, slips ${slips}`, scoresOf(walks)]]));
  console.log(`\n${reliabilityTable(table, gap)}`);
  console.log(`\nGo on with: npm run soak -- ${to - from - walks.length} ${from + walks.length}`);
}

let stopped = false;
process.on("SIGINT", () => {
  stopped = true;
});
const batch = { plant, slips: Number(slips), positions: Number(most), alternatives: false };
const start = performance.now();
for (const walk of walksOf(batch, from, to)) {
  walks.push(walk);
  if (walks.length % 25 === 0) {
    const each = (performance.now() - start) / walks.length;
    console.error(`${walks.length} of ${to - from}, ${each.toFixed(0)} ms each`);
  }
  const { verdict, outcome } = walk;
  if (verdict.end === "lost" || !outcome.works) console.error(`${verdict.end}: ${walk.what}`);
  // A turn of the loop, so that Ctrl-C is heard.
  await new Promise((resolve) => setTimeout(resolve, 0));
  if (stopped) break;
}
print();
