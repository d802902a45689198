import { alike } from "./alike.ts";
import type { SmallRepair, SmallTest } from "./small.ts";

/** Tests that tell something, and of those that surely tell the same the one that takes least time. */
export function tellsMore(tests: readonly SmallTest[]): readonly SmallTest[] {
  const telling = tests.filter(({ columns }) => columns.length > 1);
  return telling.filter(
    (test) =>
      !telling.some((other) => other !== test && cheaper(other, test) && sameAs(other, test)),
  );
}

/** Of two as cheap the earlier. */
const cheaper = (a: SmallTest | SmallRepair, b: SmallTest | SmallRepair): boolean =>
  a.seconds < b.seconds || (a.seconds === b.seconds && a.at < b.at);

/** Whether two tests have the same columns in any order. With slips drawn apart it may pay to ask both. */
function sameAs(a: SmallTest, b: SmallTest): boolean {
  if (a.columns.length !== b.columns.length || !certain(a) || !certain(b)) return false;
  const both = alike([...a.columns, ...b.columns].map((column) => [column]));
  return both.every((one) => one < a.columns.length);
}

/** Whether every hypothesis has one answer alone. */
export const certain = ({ columns }: SmallTest): boolean =>
  columns.every((column) => column.every((p) => p === 0 || p === 1));

/** Repairs that do something, but for those that another makes needless. To hear that nothing is wrong counts. */
export function curesMore(repairs: readonly SmallRepair[]): readonly SmallRepair[] {
  const some = repairs.filter(({ cures }) => cures.some((share) => share > 0));
  return some.filter((repair) => !some.some((other) => needless(repair, other)));
}

/** Whether another repair surely cures all that one may cure, and takes no longer. */
const needless = (repair: SmallRepair, other: SmallRepair): boolean =>
  cheaper(other, repair) &&
  repair.cures.every((share, at) => share === 0 || (other.cures[at] as number) === 1);
