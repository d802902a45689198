import { type Circuit, open } from "#core/circuit/circuit.ts";
import type { Ohms } from "#core/units/units.ts";
import { chassis, loaded, resistor, sleeve } from "./boxes.ts";
import { type Fault, type Normal, type Plug, type Probe, point, type Socket } from "./part.ts";
import type { Contact } from "./plugs.ts";
import { normalFaults, wornReturn } from "./socket-faults.ts";
import { type Connector, legsOf } from "./stages.ts";

/**
 * What a box takes a stereo feed in by (handbook, section 3). Of two jacks the left is normalled to the right. 'one balanced jack' takes the
 * difference of tip and ring, for one signal.
 */
export const inputKinds = [
  "stereo jack",
  "left and right jacks",
  "balanced left and right jacks",
  "XLR pair",
  "RCA pair",
  "one balanced jack",
] as const;
export type InputKind = (typeof inputKinds)[number];

/** The input of a box: what it adds to the part. */
export interface Inlet {
  readonly sockets: readonly Socket[];
  readonly takes: readonly Probe[];
  readonly normals: readonly Normal[];
  readonly faults: readonly Fault[];
}

/** The parameter of a box: 10 to 47 kΩ a side is usual (handbook, section 3). */
export const inputOhms = { unit: "Ω", typical: 10_000, least: 600, most: 1_000_000 } as const;

const spring: Ohms = 0.05;
const [left, right] = ["in left", "in right"];

/** The inputs of a box, `ohms` to the chassis from each contact that carries signal. Sockets: 'in', or 'in left' and 'in right'. */
export function inletOf(kind: InputKind, ohms: Ohms): Inlet {
  switch (kind) {
    case "stereo jack":
      return stereoJack(ohms);
    case "left and right jacks":
      return normalled(pair("TS", ohms, ["tip"], "sleeve"), ["tip"]);
    case "balanced left and right jacks":
      return normalled(balancedPair("jack", ohms), ["tip", "ring"]);
    case "XLR pair":
      return balancedPair("XLR", ohms);
    case "RCA pair":
      return pair("RCA", ohms, ["tip"], "sleeve");
    case "one balanced jack": {
      const one = balancedInput("in", "jack", ohms);
      return { ...plain, sockets: [one], takes: [differenceAt("in", "jack")] };
    }
  }
}

const plain = { normals: [], faults: [] };

/** What a box takes in at one contact, against its chassis. */
const probeAt = (socket: string, contact: Contact): Probe => ({
  plus: point(socket, contact),
  minus: chassis,
});

/** What a differential input takes in: hot less cold. */
export const differenceAt = (socket: string, connector: Connector): Probe => ({
  plus: point(socket, legsOf[connector].hot),
  minus: point(socket, legsOf[connector].cold),
});

const loads = (
  name: string,
  ohms: Ohms,
  contacts: readonly Contact[],
  screen: Contact,
): Circuit => [...contacts.map((contact) => loaded(name, contact, ohms)), sleeve(name, screen)];

/** A differential input: `ohms` from each leg to the chassis. */
export const balancedInput = (
  name: string,
  connector: Connector,
  ohms: Ohms,
  partner?: string,
): Socket => {
  const { hot, cold, screen } = legsOf[connector];
  return {
    name,
    kind: connector === "XLR" ? "XLR" : "TRS",
    side: "in",
    ...(partner === undefined ? {} : { partner }),
    circuit: loads(name, ohms, [hot, cold], screen),
  };
};

const stereoJack = (ohms: Ohms): Inlet => ({
  sockets: [
    {
      name: "in",
      kind: "TRS",
      side: "in",
      circuit: loads("in", ohms, ["tip", "ring"], "sleeve"),
    },
  ],
  takes: [probeAt("in", "tip"), probeAt("in", "ring")],
  normals: [],
  faults: [wornReturn("in", "sleeve", open)],
});

function pair(kind: "TS" | "RCA", ohms: Ohms, signal: readonly Contact[], screen: Contact): Inlet {
  const side = (name: string, partner: string): Socket => ({
    name,
    kind,
    side: "in",
    partner,
    circuit: loads(name, ohms, signal, screen),
  });
  return {
    ...plain,
    sockets: [side(left, right), side(right, left)],
    takes: [probeAt(left, "tip"), probeAt(right, "tip")],
  };
}

const balancedPair = (connector: Connector, ohms: Ohms): Inlet => ({
  ...plain,
  sockets: [
    balancedInput(left, connector, ohms, right),
    balancedInput(right, connector, ohms, left),
  ],
  takes: [differenceAt(left, connector), differenceAt(right, connector)],
});

/** The left jack also feeds the right side, until something stands in the right one. */
const normalled = (inlet: Inlet, contacts: readonly Contact[]): Inlet => {
  const closed = contacts.map((contact) =>
    resistor(`normal of ${contact}`, point(left, contact), point(right, contact), spring),
  );
  return {
    ...inlet,
    normals: [{ whileEmpty: [right], circuit: closed }],
    faults: [...inlet.faults, ...normalFaults(left, closed)],
  };
};

/** Whether the right side is fed by the left where nothing stands in the right. */
export const isNormalled = (kind: InputKind): boolean => kind.endsWith("left and right jacks");

/** The receiving end of a link: nearly no load, and no tie between the two boxes but air. */
export const linkIn = {
  plug: { name: "link", kind: "link" } satisfies Plug,
  body: [
    resistor("link tip", point("link", "tip"), point("link", "sleeve"), 1e6),
    resistor("link ring", point("link", "ring"), point("link", "sleeve"), 1e6),
    resistor("link air", point("link", "sleeve"), chassis, open),
  ] satisfies Circuit,
  takes: (["tip", "ring"] as const).map((contact) => ({
    plus: point("link", contact),
    minus: point("link", "sleeve"),
  })) satisfies readonly Probe[],
} as const;
