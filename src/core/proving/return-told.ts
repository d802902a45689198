import type { Happening, Measured } from "#core/checks/finding.ts";
import { build, type Rig, wornAt } from "#core/rig/rig.ts";
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
  const { gains, error } = last.finding;
  const told = returnOhms(rig, provedAt, gains, error);
  return told === "not shown" ? undefined : told;
}

type MatrixMeasured = Extract<Happening, { kind: "finding" }> & { readonly finding: Measured };

const isMatrix = (one: Happening): one is MatrixMeasured =>
  one.kind === "finding" && one.finding.asked.check === "matrix";
