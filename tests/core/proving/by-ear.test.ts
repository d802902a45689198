import { expect, test } from "vitest";
import type { PartKind } from "#core/parts/catalogue.ts";
import { leadRig, provedAt } from "#core/proving/lead-rig.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import { seeded } from "#core/units/random.ts";
import { walk } from "#tests/walkthrough/walk.ts";
import { derived, drawn, ownFaults } from "./prover.ts";

const kinds: readonly PartKind[] = ["TRS lead", "XLR lead", "insert Y", "one-to-both lead"];

test.each(kinds)(
  "%s: what ears can tell is found by ears, and the rest is listed",
  {
    timeout: 120_000,
  },
  (kind) => {
    const rig = leadRig({ kind, by: "ear" });
    const unseen = new Set(unseenBy("ear", rig).faults.map(({ id }) => id));
    const audible = ownFaults(derived(drawn(rig))).filter(
      ({ id, comesAndGoes }) => !unseen.has(id) && !comesAndGoes,
    );
    const walks = audible.map((fault, at) => {
      const walked = walk({ rig, planted: [fault], slips: 0, random: seeded(at) }, provedAt);
      const suspects = walked.derived.standing(provedAt).suspects.slice(0, 5);
      const place = suspects.findIndex(({ group }) => group.faults.includes(fault));
      return { fault, end: walked.end, place: walked.mended ? 0 : place };
    });
    const missed = walks.filter(({ place, end }) => place < 0 || end === "healthy");
    const first = walks.filter(({ place }) => place === 0);
    const weigh = (some: typeof walks) => some.reduce((sum, { fault }) => sum + fault.weight, 0);
    const share = weigh(first) / weigh(walks);
    console.log(
      `${kind}: ${walks.length} audible, ${first.length} first (${(100 * share).toFixed(0)} % by odds), ${unseen.size} unseen; not first: ${walks
        .filter(({ place }) => place !== 0)
        .map(({ fault, end }) => `${fault.at} ${fault.name} (${end})`)
        .join(", ")}`,
    );
    expect(missed.map(({ fault, end }) => `${fault.id}: ${end}`)).toEqual([]);
    expect(share).toBeGreaterThan(0.7);
  },
);

test("one leg of a balanced line is heard beside a good one", () => {
  const unseen = unseenBy("ear", leadRig({ kind: "XLR lead", by: "ear" })).faults;
  const names = unseen.map(({ name }) => name);
  expect(names).not.toContain("hot open");
  expect(names).not.toContain("hot and cold exchanged");
  expect(names).toContain("screen open");
});
