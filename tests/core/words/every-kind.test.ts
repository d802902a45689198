import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { faultNames } from "#core/parts/fault-names.ts";
import { clientId, listenerOf, operatorId } from "#core/rig/rig.ts";
import { type RigFault, rigFaults } from "#core/rig/rig-faults.ts";
import { english } from "#core/words/english.ts";
import { faultText, mendText, whereText } from "#core/words/fault-text.ts";
import { german } from "#core/words/german.ts";
import type { Language } from "#core/words/language.ts";
import { everyRig } from "#tests/reference/every-rig.ts";

/** Every fault of every rig that has one of a kind, with what is said of it. */
const saidIn = (language: Language) =>
  everyRig.flatMap((rig) =>
    rigFaults(rig).map((fault) => ({
      rig,
      fault,
      kind: rig.part(fault.part).kind,
      texts: { is: faultText(language, rig, fault), mend: mendText(language, rig, fault) },
    })),
  );
const said = saidIn(english);
const gesagt = saidIn(german);

/** How a fault's part is called. To somebody who listens, what to do is said without a name. */
function nameOf({ part }: RigFault): RegExp {
  if (part === operatorId) return /whoever writes the answers down/i;
  if (part === clientId) return /the feed/;
  return part.endsWith(listenerOf("")) ? /./ : new RegExp(part);
}

describe.each(Object.keys(catalogue) as PartKind[])("%s", (kind) => {
  const own = said.filter((one) => one.kind === kind);

  test("is in a rig, with faults", () => {
    expect(own.length).toBeGreaterThan(0);
  });

  test("what is wrong, and what to do, names the part and leaves no gap", () => {
    for (const { fault, texts } of own)
      for (const text of Object.values(texts)) {
        expect(text, fault.id).not.toMatch(/@|undefined|\s\s|\.$/);
        expect(text, fault.id).toMatch(nameOf(fault));
      }
    for (const { rig, fault, texts } of own)
      expect(texts.is, fault.id).toContain(whereText(english, rig, fault));
  });
});

test("in German each names its place as well, and leaves no gap", () => {
  for (const { rig, fault, texts } of gesagt) {
    for (const text of Object.values(texts))
      expect(text, fault.id).not.toMatch(/@|undefined|\s\s|\.$|: listener/);
    expect(texts.is, fault.id).toContain(whereText(german, rig, fault));
  }
});

test.for([said, gesagt])(
  "a seat is called by the name on its tape, never by its place in the rig",
  (all) => {
    for (const { rig, fault, texts } of all.filter(({ kind }) => kind === "listener")) {
      const seat = rig.positions.find(({ id }) => listenerOf(id) === fault.part);
      expect(texts.is, fault.id).toContain(seat?.name ?? "no seat");
      expect(texts.is).not.toContain(": listener");
    }
  },
);

test.for(Object.entries({ english, german }))(
  "a place stands on tape by itself: %s",
  ([, language]) => {
    const places = everyRig.flatMap((rig) =>
      rigFaults(rig).map((fault) => ({ fault, text: whereText(language, rig, fault) })),
    );
    expect(places.some(({ fault }) => fault.name === "wrong socket")).toBe(true);
    for (const { fault, text } of places) expect(text, fault.id).not.toMatch(/[,;:. ]$|^[,;:. ]/);
  },
);

test("what an eye sees is said of every fault, in a few words", () => {
  for (const { faults } of [english, german])
    for (const name of faultNames) {
      const { seen } = faults[name];
      expect(seen.length, name).toBeGreaterThan(3);
      expect(seen.length, name).toBeLessThan(80);
      expect(seen, name).not.toMatch(/@|\.$/);
    }
});
