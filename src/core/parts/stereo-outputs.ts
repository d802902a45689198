import type { Circuit } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { driven, loaded, sleeve } from "./boxes.ts";
import type { Socket } from "./part.ts";
import type { Contact, JackSize, SocketKind } from "./plugs.ts";

/** The sockets a stereo plug of headphones goes into. */
export const phonesKinds = [
  "TRS",
  "TRS with a deep spring",
  "four-pole, common on ring 2",
  "four-pole, common on sleeve",
] as const satisfies readonly SocketKind[];
export type PhonesKind = (typeof phonesKinds)[number];

/** A stereo output on one jack: tip left, ring right, one common return. */
export interface StereoOutput {
  readonly name: string;
  readonly kind?: PhonesKind;
  readonly size?: JackSize;
  /** Of each side. */
  readonly ohms: Ohms;
  /** The signals inside the box that it sends; 'left' and 'right' where left out. */
  readonly buses?: readonly [left: string, right: string];
  /** The controls that turn its sides up and down. */
  readonly levels?: readonly [left: string, right: string];
}

/** From a microphone contact to the chassis: what feeds a headset's microphone. Handbook, section 2. */
const bias: Ohms = 2200;

/** Where a socket of this kind has its common. */
export const commonOf = (kind: PhonesKind): Contact =>
  kind === "four-pole, common on ring 2" ? "ring 2" : "sleeve";

/** A headphone socket of a box. */
export function stereoOutput(output: StereoOutput): Socket {
  const { name, kind = "TRS", size, ohms, buses = ["left", "right"], levels = [] } = output;
  return {
    name,
    kind,
    side: "out",
    ...(size === undefined ? {} : { size }),
    circuit: [
      driven(name, "tip", ohms, { [buses[0]]: 1 }, levels[0]),
      driven(name, "ring", ohms, { [buses[1]]: 1 }, levels[1]),
      sleeve(name, commonOf(kind)),
      ...microphone(name, kind),
    ],
  };
}

function microphone(name: string, kind: PhonesKind): Circuit {
  if (!kind.startsWith("four-pole")) return [];
  return [loaded(name, commonOf(kind) === "sleeve" ? "ring 2" : "sleeve", bias)];
}

/** One RCA output. */
export const rcaOutput = (name: string, partner: string, bus: string, ohms: Ohms): Socket => ({
  name,
  kind: "RCA",
  side: "out",
  partner,
  circuit: [driven(name, "tip", ohms, { [bus]: 1 }), sleeve(name)],
});

/** What stands for the ideal source of a link. */
const ideal: Ohms = 1;

/** Where radio or digital audio leaves a box, both sides at once. */
export const linkOutput = (
  name: string,
  [left, right]: readonly [string, string] = ["left", "right"],
): Socket => ({
  name,
  kind: "link",
  side: "out",
  circuit: [
    driven(name, "tip", ideal, { [left]: 1 }),
    driven(name, "ring", ideal, { [right]: 1 }),
    sleeve(name),
  ],
});

/** Where radio or digital audio leaves a box for several others, the same on each. */
export const linkOutputs = (links: number): readonly Socket[] =>
  Array.from({ length: links }, (_, index) => linkOutput(`link ${index + 1}`));
