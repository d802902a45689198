import { describe, expect, test } from "vitest";
import { provable } from "#core/proving/ends.ts";
import { leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { seeded } from "#core/units/random.ts";
import { derived, drawn, ownFaults, type Proved, prove } from "./prover.ts";

const rows: string[] = [];

/** What becomes of planted faults. Named: it is in the group that has 95 %, or a move that was proposed mended it on the way. */
const fates = ["named", "first", "shown", "unseen", "missed"] as const;
type Fate = (typeof fates)[number];

/** The same fault: what comes and goes and stood open at each measuring is named as its steady twin. */
const isSame = (fault: RigFault, { part, at, name }: RigFault): boolean =>
  fault.part === part && fault.at === at && fault.name === name;

function fateOf(fault: RigFault, { proof, mended, derived: all }: Proved): Fate {
  const has = (some: readonly RigFault[]) => some.some((one) => isSame(fault, one));
  if (mended || (proof.state === "wrong" && has(proof.alike))) return "named";
  const suspects = all.standing(provedAt).suspects.slice(0, 5);
  const at = suspects.findIndex(({ group }) => has(group.faults));
  if (proof.state === "unsure") return ["first", "shown"][Math.min(at, 1)] as Fate;
  // It was whole at the one measuring that there was.
  return fault.comesAndGoes === true && proof.state === "healthy" ? "unseen" : "missed";
}

describe.each(["return", "load box"] as const)("by %s", (by) => {
  test.each(provable)("%s: each fault is named, shown, or listed as unseen", (kind) => {
    const rig = leadRig({ kind, by });
    const log = drawn(rig);
    const unseen = new Set(unseenBy(by, rig).faults.map(({ id }) => id));
    const all = ownFaults(derived(log)).map((fault, at) => {
      const proved = prove(log, by, [fault], seeded(at));
      return { fault, fate: unseen.has(fault.id) ? ("unseen" as const) : fateOf(fault, proved) };
    });
    expect(all.filter(({ fate }) => fate === "missed").map(({ fault }) => fault.id)).toEqual([]);
    const count = (fate: Fate) => all.filter((one) => one.fate === fate).length;
    expect(count("named")).toBeGreaterThan(count("shown"));
    const counts = [all.length, ...fates.slice(0, 4).map(count)];
    rows.push(
      `${by.padEnd(9)} ${kind.padEnd(45)}${counts.map((n) => String(n).padStart(7)).join("")}`,
    );
  });

  test.each(provable)("%s: a sound one is called healthy", (kind) => {
    const { proof, steps } = prove(drawn(leadRig({ kind, by })), by, [], seeded(7));
    expect([proof.state, steps]).toEqual(["healthy", 1]);
  });
});

test("shares named", () => {
  console.log(`${"".padEnd(55)} faults  named  first  shown unseen\n${rows.join("\n")}`);
  expect(rows).toHaveLength(2 * provable.length);
});
