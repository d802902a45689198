import { describe, expect, test } from "vitest";
import { catalogue } from "#core/parts/catalogue.ts";
import { edited, faultOf, ohmsBetween, pairs, partners } from "./wiring.ts";

const patchbay = catalogue.patchbay.make();
const reached = (node: string, used: readonly string[] = [], part = patchbay) =>
  partners(pairs(part, used), node);
const throughNormal = ["above 1.tip", "behind above 1.tip", "below 1.tip"];

describe("a whole patchbay", () => {
  test("joins each front socket to the one behind it, and by its normals the rows of a pair", () => {
    for (const leg of ["tip", "ring"])
      expect(reached(`behind below 1.${leg}`)).toEqual(
        throughNormal.map((node) => node.replace("tip", leg)),
      );
  });

  test("keeps its pairs apart but for the metal", () => {
    const across = pairs(patchbay).filter((pair) => /1\..*2\.|2\..*1\./.test(pair));
    expect(across.length).toBeGreaterThan(0);
    expect(across.every((pair) => pair.split("=").every((node) => node.endsWith(".sleeve")))).toBe(
      true,
    );
  });
});

/** Which plugs break the normals, by the trade's names. */
test.each([
  ["half-normalled", "above 1", throughNormal],
  ["half-normalled", "below 1", ["below 1.tip"]],
  ["normalled", "above 1", ["below 1.tip"]],
  ["normalled", "below 1", ["below 1.tip"]],
  ["not normalled", "above 2", ["below 1.tip"]],
] as const)("%s, a plug in '%s'", (normalling, used, printed) => {
  const part = catalogue.patchbay.make({ normalling });
  expect(reached("behind below 1.tip", [used], part)).toEqual(printed);
});

test.each(["tip", "ring"] as const)("an oxidised normal of the %s", (leg) => {
  const gone = edited(patchbay, faultOf(patchbay, `below 1 / normal's ${leg} open`).edits);
  expect(reached(`behind below 1.${leg}`, [], gone)).toEqual([`below 1.${leg}`]);
  const weak = edited(patchbay, faultOf(patchbay, `below 1 / normal's ${leg} of 10 kilohms`).edits);
  const closed = {
    ...weak,
    body: [...weak.body, ...(weak.normals ?? []).flatMap(({ circuit }) => circuit)],
  };
  const ohms = ohmsBetween(closed, `behind above 1.${leg}`, `behind below 1.${leg}`);
  expect(ohms).toBeGreaterThan(9999);
  expect(ohms).toBeLessThan(10_001);
});

test("behind a socket: a joint off, and legs crossed", () => {
  const off = edited(patchbay, faultOf(patchbay, "behind above 1 / ring open").edits);
  expect(reached("behind above 1.ring", [], off)).toEqual([]);
  const crossed = edited(
    patchbay,
    faultOf(patchbay, "behind above 1 / tip and ring exchanged").edits,
  );
  expect(reached("behind above 1.tip", ["below 1"], crossed)).toEqual(["above 1.ring"]);
  expect(reached("behind above 1.ring", ["below 1"], crossed)).toEqual(["above 1.tip"]);
});

test("only one that carries microphones warns of phantom power", () => {
  const harms = (carries: string) =>
    new Set(catalogue.patchbay.make({ carries }).sockets.map((socket) => socket.harms));
  expect([...harms("line")]).toEqual([undefined]);
  expect([...harms("microphones")]).toEqual(["phantom power"]);
});

test("sockets of a left and a right pair are partners, and an odd one out has none", () => {
  const { sockets } = catalogue.patchbay.make({ pairs: 3 });
  const partner = (name: string) => sockets.find((one) => one.name === name)?.partner;
  expect(partner("above 1")).toBe("above 2");
  expect(partner("behind below 2")).toBe("behind below 1");
  expect(partner("above 3")).toBeUndefined();
});
