import { describe, expect, test } from "vitest";
import type { Circuit } from "#core/circuit/circuit.ts";
import { hum } from "#core/parts/boxes.ts";
import { catalogue } from "#core/parts/catalogue.ts";
import { faultNames } from "#core/parts/fault-names.ts";
import type { Choice, Quantity } from "#core/parts/kind.ts";
import type { Edit, Part } from "#core/parts/part.ts";
import { midband } from "#core/rig/midband.ts";

/** Every part, with every choice of words that changes it and the most of every number, one at a time. */
const parts: readonly (readonly [string, Part])[] = Object.entries(catalogue).flatMap(
  ([kind, { parameters, make }]): (readonly [string, Part])[] => [
    [kind, make()],
    ...Object.entries(parameters).flatMap(([name, parameter]) =>
      valuesOf(parameter).map(
        (value) => [`${kind}, ${name}: ${value}`, make({ [name]: value })] as const,
      ),
    ),
  ],
);

function valuesOf(parameter: Choice | Quantity): readonly (string | number)[] {
  if ("choices" in parameter) return parameter.choices.filter((word) => word !== parameter.typical);
  return [parameter.least, parameter.unit === "outputs" ? 6 : parameter.most];
}

const circuitOf = ({ body, normals = [], sockets }: Part): Circuit => [
  ...body,
  ...normals.flatMap(({ circuit }) => circuit),
  ...sockets.flatMap(({ circuit }) => circuit),
];

/** Whether an edit names something that the part has, and changes it. */
function bites(part: Part, edit: Edit): boolean {
  const circuit = circuitOf(part);
  const nodes = new Set(circuit.flatMap(({ a, b }) => [a, b]));
  const element = "element" in edit ? circuit.find(({ name }) => name === edit.element) : undefined;
  switch (edit.edit) {
    case "ohms":
      return element !== undefined && element.kind !== "capacitor" && element.ohms !== edit.ohms;
    case "rewire":
      return (
        element !== undefined && [edit.a, edit.b].every((to) => to === undefined || nodes.has(to))
      );
    case "bridge":
      return nodes.has(edit.a) && nodes.has(edit.b) && edit.a !== edit.b;
    case "control":
      return edit.control in part.controls && part.controls[edit.control] !== edit.value;
    case "plug":
      return part.plugs.some(({ name, kind }) => name === edit.plug && kind !== edit.kind);
    case "depth":
    case "socket":
      return part.plugs.some(({ name }) => name === edit.plug);
  }
}

describe.each(parts)("%s", (_, part) => {
  test("no two elements, sockets, plugs or faults bear one name", () => {
    const faults = part.faults.map(
      ({ at, name, comesAndGoes }) => `${at} / ${name} ${comesAndGoes ?? ""}`,
    );
    const names = [circuitOf(part), part.sockets, part.plugs].map((named) =>
      named.map(({ name }) => name),
    );
    for (const list of [...names, faults]) expect(list).toEqual([...new Set(list)]);
  });

  test("every fault changes something that is there", () => {
    for (const { name, edits } of part.faults) {
      expect(edits.length, name).toBeGreaterThan(0);
      for (const edit of edits)
        expect(bites(part, edit), `${name}: ${JSON.stringify(edit)}`).toBe(true);
    }
  });

  test("every fault has odds, a repair, a listed name and a place on the part", () => {
    const places = [
      "settings",
      "body",
      ...[...part.plugs, ...part.sockets].map(({ name }) => name),
    ];
    for (const fault of part.faults) {
      expect(faultNames).toContain(fault.name);
      expect(places).toContain(fault.at);
      expect(fault.weight).toBeGreaterThan(0);
      expect(fault.weight).toBeLessThan(10_000);
      expect(fault.repair).toBeGreaterThan(0);
    }
  });

  test("takes in and sends what it has", () => {
    const nodes = new Set(circuitOf(part).flatMap(({ a, b }) => [a, b]));
    for (const { plus, minus } of part.takes)
      expect(nodes.has(plus) && nodes.has(minus)).toBe(true);
    const control = (name: string) => part.controls[name] ?? Number.NaN;
    const buses = part.through?.(control, midband) ?? {};
    for (const gains of Object.values(buses)) {
      expect(gains).toHaveLength(part.takes.length || 2);
      expect(
        gains.every((gain) => Number.isFinite(typeof gain === "number" ? gain : gain.re + gain.im)),
      ).toBe(true);
    }
    const sent = circuitOf(part).flatMap((one) =>
      one.kind === "source" ? Object.keys(one.drive) : [],
    );
    for (const bus of sent) expect([...Object.keys(buses), hum]).toContain(bus);
  });

  test("sockets that are taken for another are there, and pairs point at each other", () => {
    const named = new Map(part.sockets.map((socket) => [socket.name, socket]));
    for (const { name, side, mistakenFor = {}, partner } of part.sockets) {
      for (const other of Object.keys(mistakenFor)) expect(named.get(other)?.side).toBe(side);
      if (partner !== undefined) expect(named.get(partner)?.partner).toBe(name);
    }
  });
});
