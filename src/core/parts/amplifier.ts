import { type Element, open } from "#core/circuit/circuit.ts";
import { chassis, driven, floating, loaded, sleeve } from "./boxes.ts";
import type { Buses, Fault, Part, Socket } from "./part.ts";
import { point } from "./part.ts";
import { switchFault } from "./switch-faults.ts";

const input = "in";

/** What one output is called. */
export const outputName = (index: number): string => `output ${index + 1}`;

const output = (name: string): Socket => ({
  name,
  kind: "TRS",
  side: "out",
  circuit: [
    driven(name, "tip", 10, { left: 1 }, `${name} volume`),
    driven(name, "ring", 10, { right: 1 }, `${name} volume`),
    sleeve(name),
  ],
});

const dead = (name: string, side: "left" | "right", contact: "tip" | "ring"): Fault => ({
  name: `${side} side of the output dead`,
  at: name,
  edits: [{ edit: "ohms", element: `${name} ${contact}`, ohms: open }],
  weight: 4,
  slot: `${name} ${contact}`,
  seen: false,
  repair: 20,
});

const outputFaults = (name: string): readonly Fault[] => [
  switchFault("volume down", `${name} volume`, 0, 80, name),
  dead(name, "left", "tip"),
  dead(name, "right", "ring"),
];

/** One stereo input to every output, each with a volume of its own, on a plug-top supply. 10 kΩ a side in, 10 Ω a side out. */
export function headphoneAmplifier(outputs: number): Part {
  const names = Array.from({ length: outputs }, (_, index) => outputName(index));
  const inlet: readonly Element[] = [
    loaded(input, "tip", 10_000),
    loaded(input, "ring", 10_000),
    sleeve(input),
  ];
  return {
    kind: "headphone amplifier",
    plugs: [],
    sockets: [{ name: input, kind: "TRS", side: "in", circuit: inlet }, ...names.map(output)],
    body: [floating()],
    takes: (["tip", "ring"] as const).map((contact) => ({
      plus: point(input, contact),
      minus: chassis,
    })),
    controls: {
      mono: 0,
      power: 1,
      level: 1,
      ...Object.fromEntries(names.map((name) => [`${name} volume`, 1])),
    },
    through,
    faults: [
      switchFault("mono", "mono", 1, 50),
      switchFault("power off", "power", 0, 120),
      switchFault("volume down", "level", 0, 40),
      ...names.flatMap(outputFaults),
    ],
    look: 15,
  };
}

function through(control: (name: string) => number): Buses {
  const own = 1 - control("mono") / 2;
  const other = control("mono") / 2;
  const gain = control("power") * control("level");
  return { left: [own * gain, other * gain], right: [other * gain, own * gain] };
}
