import { describe, expect, test } from "vitest";
import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Kind, Settings } from "#core/parts/kind.ts";
import type { Part } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { plugOf, socketOf } from "#core/rig/rig.ts";
import { rigFaults } from "#core/rig/rig-faults.ts";
import { builtInRigs } from "#core/rig/rigs.ts";
import { everyRig } from "./every-rig.ts";

const kinds = Object.entries(catalogue) as (readonly [PartKind, Kind])[];
const parts = everyRig.flatMap((rig) => rig.parts);

/** Every word that may be said of a kind and is not typical, as settings. */
const choicesOf = ({ parameters }: Kind): Settings[] =>
  Object.entries(parameters).flatMap(([name, parameter]) =>
    "choices" in parameter
      ? parameter.choices
          .filter((word) => word !== parameter.typical)
          .map((word) => ({ [name]: word }))
      : [],
  );

/** All that tells in a circuit or among the faults: sizes of jacks and warnings do not. */
const electrical = ({ plugs, sockets, body, normals, takes, faults }: Part): string =>
  JSON.stringify([
    plugs.map(({ name, kind }) => [name, kind]),
    sockets.map(({ name, kind, circuit }) => [name, kind, circuit]),
    body,
    normals,
    takes,
    faults,
  ]);

describe.each(kinds)("%s", (kind, of) => {
  test("its choices that change the circuit stand in a rig", () => {
    const said = parts.filter((part) => part.kind === kind).map(({ settings = {} }) => settings);
    const missing = choicesOf(of)
      .filter((choice) => electrical(of.make(choice)) !== electrical(of.make()))
      .filter((choice) =>
        Object.entries(choice).every(([name, word]) => said.every((one) => one[name] !== word)),
      );
    expect(missing).toEqual([]);
  });

  test("its faults can be had in a rig, each by its name", () => {
    const had = new Set(
      everyRig.flatMap((rig) =>
        rigFaults(rig)
          .filter(({ part }) => rig.part(part).kind === kind)
          .map(({ name }) => name),
      ),
    );
    const own = [{}, ...choicesOf(of)].flatMap((settings) => of.make(settings).faults);
    expect(own.map(({ name }) => name).filter((name) => !had.has(name))).toEqual([]);
    expect(had.size).toBeGreaterThan(0);
  });
});

test("every plug goes into its socket, and no socket has two", () => {
  const drawn = everyRig.slice(builtInRigs.length);
  const misfits = drawn.flatMap((rig) =>
    rig.plugged
      .filter(({ part, plug, into, socket }) => {
        const [one, other] = [plugOf(rig.part(part), plug), socketOf(rig.part(into), socket)];
        return !fits(one, other);
      })
      .map(({ part, plug }) => `${rig.name}: ${part}, ${plug}`),
  );
  expect(misfits).toEqual([]);
  for (const rig of drawn) {
    const used = rig.plugged.map(({ into, socket }) => `${into}: ${socket}`);
    expect(used, rig.name).toEqual([...new Set(used)]);
  }
});

test("no two rigs bear one name", () => {
  const names = everyRig.map(({ name }) => name);
  expect(names).toEqual([...new Set(names)]);
});
