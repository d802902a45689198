import fc from "fast-check";
import { expect, test } from "vitest";
import { hangingIn, partsBy } from "#core/drawing/hanging.ts";
import { replugged, spotsFor } from "#core/drawing/replugging.ts";
import { chainTo } from "#core/rig/chain.ts";
import { build } from "#core/rig/rig.ts";
import { starts } from "#core/rig/starts.ts";
import { rigTroubles } from "#core/rig/troubles.ts";
import { long } from "#tests/support/long.ts";
import { starts as words } from "#ui/words/english/starts.ts";
import { after, edit, someEdit } from "./some-edits.ts";

const someRig = fc
  .tuple(fc.constantFrom(...starts), fc.array(someEdit, { maxLength: 12 }))
  .map(([{ make }, edits]) => after(make(words), edits));

const numRuns = long ? 2000 : 150;
const timeout = 300_000;

test("whatever is edited, what comes out can be, or is refused", { timeout }, () => {
  fc.assert(
    fc.property(someRig, someEdit, (rig, some) => {
      const edited = edit(rig, some);
      if ("refusal" in edited) return;
      expect(rigTroubles(edited.rig)).toEqual([]);
      const built = build(edited.rig);
      for (const { id } of edited.rig.positions)
        expect(chainTo(built, id).length).toBeGreaterThan(1);
    }),
    { numRuns },
  );
});

test("every part hangs in the picture once", { timeout }, () => {
  fc.assert(
    fc.property(someRig, (rig) => {
      const { roots, loose } = hangingIn(build(rig));
      const drawn = [
        ...roots.flatMap(({ part, joins }) => [part, ...joins.flatMap(partsBy)]),
        ...loose,
      ];
      expect([...drawn].sort()).toEqual(rig.parts.map(({ id }) => id).sort());
    }),
    { numRuns },
  );
});

test("a plug put elsewhere and back leaves the rig as it was", { timeout }, () => {
  fc.assert(
    fc.property(someRig, fc.nat(1000), fc.nat(1000), (rig, one, other) => {
      const end = rig.plugged[one % rig.plugged.length];
      if (end === undefined) return;
      const spots = spotsFor(build(rig), end);
      const spot = spots[other % Math.max(spots.length, 1)];
      if (spot === undefined) return;
      const hand = { part: end.part, plug: end.plug };
      const there = replugged(rig, hand, spot);
      if ("refusal" in there) return;
      const back = replugged(there.rig, hand, { into: end.into, socket: end.socket });
      expect(back).toEqual({ rig });
    }),
    { numRuns },
  );
});
