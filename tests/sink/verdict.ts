import type { PartKind } from "#core/parts/catalogue.ts";
import { matrixOf, type Taken } from "#core/proving/lead-matrix.ts";
import { leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { proofOf } from "#core/proving/proof.ts";
import { derive } from "#core/session/derive.ts";
import { add } from "#core/session/log.ts";

/** What the core makes of one measurement of a lead in a load box, against that of a healthy one: healthy, or the likeliest things to be wrong. */
export function verdictOf(kind: PartKind, taken: Taken, healthy: Taken): readonly string[] {
  const told = matrixOf(taken, healthy);
  if (told === undefined) throw new Error("only one input was heard");
  const drawn = add([], { entry: "drawing", rig: leadRig({ kind, by: "load box" }) }, 0);
  const asked = { check: "matrix", position: provedAt } as const;
  const derived = derive(add(drawn, { entry: "finding", finding: { asked, ...told } }, 0));
  if (derived === undefined) throw new Error("the log draws no rig");
  const { state, alike } = proofOf(derived, "load box");
  return state === "healthy" ? ["healthy"] : alike.map(({ part, name }) => `${part}: ${name}`);
}
