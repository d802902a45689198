import type { Happening, Measured } from "#core/checks/finding.ts";
import { earMatrix } from "#core/rig/ear-matrix.ts";
import { build, type Rig, wornAt } from "#core/rig/rig.ts";
import { chain, type Matrix } from "#core/units/matrix.ts";
import { provedAt } from "./lead-rig.ts";
import { type MeasuredOhms, returnOhms } from "./return-ohms.ts";

/**
 * What the last matrix that was measured of a lead says of its return: ohms beyond the lead as drawn, or open. Nothing where nothing was measured, or
 * where it shows in no load box with one star point.
 */
export function returnTold(
  drawn: Rig,
  happenings: readonly Happening[],
): MeasuredOhms | "open" | undefined {
  const rig = build(drawn);
  const last = happenings.findLast(isMatrix);
  const box = rig.part(wornAt(rig, provedAt));
  const star = box.sockets.some(({ circuit }) => circuit.some(({ name }) => name === "in bush"));
  if (last === undefined || box.kind !== "load box" || !star) return undefined;
  const { gains, error, level } = last.finding;
  const [ll, lr, rl, rr] = gains.map(([re, im]) => ({ re, im }));
  if (!ll || !lr || !rl || !rr) return undefined;
  const own: Matrix = [
    [ll, lr],
    [rl, rr],
  ];
  // Against a good lead, what that one does has fallen out of it.
  const whole = level === undefined ? chain(earMatrix(rig, provedAt, []), own) : own;
  const at = (row: number, column: number): readonly [number, number] => {
    const { re = 0, im = 0 } = whole[row]?.[column] ?? {};
    return [re, im];
  };
  const told = returnOhms(rig, provedAt, [at(0, 0), at(0, 1), at(1, 0), at(1, 1)], error);
  return told === "not shown" ? undefined : told;
}

type MatrixMeasured = Extract<Happening, { kind: "finding" }> & { readonly finding: Measured };

const isMatrix = (one: Happening): one is MatrixMeasured =>
  one.kind === "finding" && one.finding.asked.check === "matrix";
