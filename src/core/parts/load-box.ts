import type { Circuit, Node } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { chassis, loaded, resistor } from "./boxes.ts";
import { inputOhms } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import { grounds, groundsOf } from "./line-inputs.ts";
import type { Probe, Socket } from "./part.ts";
import { point } from "./part.ts";
import type { Contact } from "./plugs.ts";
import { wornReturn } from "./socket-faults.ts";

/** What leads end in: one socket with both loads on one return, or one for each side with a return of its own. */
const loadInputs = ["stereo jack", "XLR", "left and right jacks", "RCA pair"] as const;
type LoadInput = (typeof loadInputs)[number];

/** How far two resistors of 1 % leave a gain from its drawing, with what the box's own contacts add. Handbook, section 7. */
const tolerance = 0.01;

/** From a socket's return spring to the star point. Handbook, section 5. */
const bush: Ohms = 0.02;

/** One socket of the box, with the resistors that it has and what reads them. */
interface Loads {
  readonly socket: Socket;
  readonly takes: readonly Probe[];
}

interface Place {
  readonly name: string;
  readonly kind: Socket["kind"];
  /** Each contact with a resistor to the star point, and what that resistor is called. */
  readonly loads: readonly (readonly [contact: Contact, called: string])[];
  /** Where the star point hangs, and nowhere else. */
  readonly screen: Contact;
  readonly partner?: string;
}

/** A balanced input across each resistor: its resistance from both of the resistor's ends to the ground of the inputs. */
function loadsOf(place: Place, ohms: Ohms, input: Ohms): Loads {
  const { name, kind, loads, screen, partner } = place;
  const star: Node = `${name} star`;
  const circuit: Circuit = [
    resistor(`${name} bush`, point(name, screen), star, bush),
    ...loads.flatMap(([contact, called]) => [
      resistor(`${called} load`, point(name, contact), star, ohms),
      loaded(name, contact, input),
      resistor(`${called} cold`, star, chassis, input),
    ]),
  ];
  const sided = partner === undefined ? {} : { partner };
  return {
    socket: { name, kind, side: "in", ...sided, circuit },
    takes: loads.map(([contact]) => ({ plus: point(name, contact), minus: star })),
  };
}

const pair = (kind: "TS" | "RCA"): readonly Place[] =>
  (["left", "right"] as const).map((side) => ({
    name: `in ${side}`,
    kind,
    loads: [["tip", side]],
    screen: "sleeve",
    partner: side === "left" ? "in right" : "in left",
  }));

const placesOf: Readonly<Record<LoadInput, readonly Place[]>> = {
  "stereo jack": [
    {
      name: "in",
      kind: "TRS",
      loads: [
        ["tip", "left"],
        ["ring", "right"],
      ],
      screen: "sleeve",
    },
  ],
  XLR: [
    {
      name: "in",
      kind: "XLR",
      loads: [
        ["pin 2", "left"],
        ["pin 3", "right"],
      ],
      screen: "pin 1",
    },
  ],
  "left and right jacks": pair("TS"),
  "RCA pair": pair("RCA"),
};

/**
 * Two resistors of 1 % in place of headphones, from each signal contact to a star point that hangs on nothing but the lead's own return, each
 * read by a balanced input of its own (handbook, section 7). Of a pair of sockets each has a star point by itself, so that neither return
 * stands in for the other. The inputs are those of the box that drives the lead, unless told otherwise: 10 kΩ from each leg.
 */
export const loadBox = kindOf(
  "measuring",
  {
    input: { choices: loadInputs, typical: "stereo jack" },
    "load ohms": { unit: "Ω", typical: 33, least: 4, most: 1000 },
    "input ohms": inputOhms,
    grounds: { choices: grounds, typical: "joined" },
  },
  ({ input, "load ohms": ohms, "input ohms": each, grounds: by }) => {
    const places = placesOf[input];
    const loads = places.map((place) => loadsOf(place, ohms, each));
    return {
      plugs: [],
      sockets: loads.map(({ socket }) => socket),
      body: groundsOf(by),
      takes: loads.flatMap(({ takes }) => takes),
      controls: {},
      measures: { tolerance },
      faults: places.map(({ name, screen }) => wornReturn(name, screen)),
      look: 15,
    };
  },
);
