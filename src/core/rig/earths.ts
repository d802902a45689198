import { type Circuit, type Element, earth, open, type Source } from "#core/circuit/circuit.ts";
import { solve } from "#core/circuit/solve.ts";
import { chassis, resistor } from "#core/parts/boxes.ts";
import { size } from "#core/units/complex.ts";
import type { Ohms } from "#core/units/units.ts";
import { midband } from "./midband.ts";
import { joined, placed } from "./placed.ts";
import { isFed, type Reach, reachInto } from "./reach.ts";
import type { BuiltRig } from "./rig.ts";

/** The circuit into a part with nothing broken. */
type Healthy = (part: string) => Circuit;

/** What an earthed mains lead has at most. */
const earthed: Ohms = 1;

/**
 * The ways to earth that a stretch's boxes have beyond it: by a lead to a further box, that box's own supply, and so on. Each such lead is one
 * resistor here, what its healthy circuit has from chassis to chassis. Boxes with an earth of their own need none.
 */
export function earthsBeyond(rig: BuiltRig, part: string, healthy: Healthy): Circuit {
  const reach = reachInto(rig, part);
  const boxes = boxesOf(rig, reach);
  if (boxes.length < 2) return [];
  return boxes.flatMap((box) => beyond(rig, box, reach, healthy));
}

/** A stand-in of `earthsBeyond`, and no element of any part. */
export const isStandIn = ({ name }: Element): boolean => name.startsWith("beyond ");

function beyond(rig: BuiltRig, box: string, here: Reach, healthy: Healthy): Circuit {
  if (rig.part(box).body.some(isMainsEarth)) return [];
  return reachesAt(rig, box)
    .filter(({ takers }) => takers[0] !== here.takers[0])
    .flatMap((reach) =>
      boxesOf(rig, reach)
        .filter((id) => id !== box)
        .flatMap((id) => {
          const ohms = ohmsBetween(rig, reach, [box, id], healthy);
          if (ohms >= open) return [];
          return [
            resistor(`beyond ${box}: ${id}`, joined(box, chassis), joined(id, chassis), ohms),
            ...placed(id, rig.part(id).body),
            ...beyond(rig, id, reach, healthy),
          ];
        }),
    );
}

const touches = ({ a, b }: Element, node: string): boolean => a === node || b === node;

const isMainsEarth = (element: Element): boolean =>
  touches(element, chassis) &&
  touches(element, earth) &&
  element.kind !== "capacitor" &&
  element.ohms <= earthed;

/** Boxes that stand on a supply: what is worn has none. */
const boxesOf = (rig: BuiltRig, { from, takers }: Reach): readonly string[] =>
  [from, ...takers].filter((id) => rig.part(id).body.some((one) => touches(one, earth)));

/** All stretches that a box is in: what feeds it, and what it feeds. */
function reachesAt(rig: BuiltRig, box: string): readonly Reach[] {
  const fed = rig.parts
    .map(({ id }) => id)
    .filter((id) => rig.part(id).takes.length > 0 && isFed(rig, id));
  const all = fed.map((id) => reachInto(rig, id));
  return all.filter(
    (reach, at) =>
      (reach.from === box || reach.takers.includes(box)) &&
      all.findIndex((one) => one.takers[0] === reach.takers[0]) === at,
  );
}

/** What a healthy stretch has between the chassis of two of its boxes, their supplies taken away; an open at most. */
function ohmsBetween(
  rig: BuiltRig,
  reach: Reach,
  [one, other]: readonly [string, string],
  healthy: Healthy,
): Ohms {
  const supplies = new Set(
    boxesOf(rig, reach).flatMap((id) =>
      rig
        .part(id)
        .body.filter((element) => touches(element, earth))
        .map(({ name }) => joined(id, name)),
    ),
  );
  const here = joined(other, chassis);
  const driven: Source = {
    kind: "source",
    name: "ohms",
    a: here,
    b: earth,
    ohms: 1,
    drive: { ohms: 1 },
  };
  const circuit = [
    ...healthy(reach.takers[0] ?? one).filter(({ name }) => !supplies.has(name)),
    resistor("ground", joined(one, chassis), earth, 1e-6),
    driven,
  ];
  const [volts] = solve(circuit, midband, ["ohms"]);
  const share = size(volts?.(here) ?? { re: 1, im: 0 });
  return share > 1 - 1e-6 ? open : share / (1 - share);
}
