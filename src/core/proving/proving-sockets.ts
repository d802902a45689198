import type { PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Connection, RigPart } from "#core/rig/rig.ts";
import type { LeadChoice } from "./choice.ts";
import type { LeadEnd, Side } from "./ends.ts";

/** What drives a lead, and the sockets that its plugs go into. */
export interface Near {
  readonly part: RigPart;
  readonly sockets: readonly string[];
}

/** What a lead leads to, with what it takes to get there, and the part that ends the way. */
export interface Far {
  readonly parts: readonly RigPart[];
  readonly plugged: readonly Connection[];
  readonly end: string;
}

type Outputs = readonly [kind: PartKind, ...sockets: string[]];

/** Outputs for each end of a lead. A headphone socket is the one stereo output that takes a single plug. */
const outputs: Readonly<Record<Exclude<LeadEnd, "TRS socket">, Outputs>> = {
  TRS: ["sound interface", "phones"],
  TS: ["sound interface", "line left"],
  XLR: ["console", "main left"],
  "two TS": ["sound interface", "line left", "line right"],
  "two TRS": ["sound interface", "line left", "line right"],
  "two RCA": ["player", "left", "right"],
  "two XLR": ["console", "main left", "main right"],
};

const isBalanced = ({ end }: Side, { carries }: LeadChoice): boolean =>
  end === "TRS" && carries === "one balanced line";

/** What drives a lead. Throws on an end that no output takes. */
export function nearFor(side: Side, choice: LeadChoice): Near {
  const { end } = side;
  if (end === "TRS socket")
    throw new RangeError("a lead that ends in a socket is driven at its plug");
  const [kind, ...sockets] = isBalanced(side, choice)
    ? (["sound interface", "line left"] as const)
    : outputs[end];
  const { stage, by } = choice;
  const staged: Settings =
    stage === undefined || kind === "player"
      ? {}
      : { balancing: stage.balancing, "leg ohms": stage.ohms ?? 0 };
  // One box drives the lead and measures it: its ground is drawn as an earth that both halves have.
  const supply = by === "ear" ? "floating" : "mains-earthed";
  return { part: { id: "source", kind, settings: { supply, ...staged } }, sockets };
}

/** The input that a box takes a lead in by, and its sockets. */
type Inputs = readonly [input: string, ...sockets: string[]];
const pair = ["in left", "in right"] as const;

const inputs: Readonly<Record<Exclude<LeadEnd, "TRS socket">, Inputs>> = {
  TRS: ["stereo jack", "in"],
  TS: ["left and right jacks", "in left"],
  XLR: ["XLR pair", "in left"],
  "two TS": ["left and right jacks", ...pair],
  "two TRS": ["balanced left and right jacks", ...pair],
  "two RCA": ["RCA pair", ...pair],
  "two XLR": ["XLR pair", ...pair],
};

/** Of a load box, where that has others. */
const loads: Readonly<Partial<Record<LeadEnd, Inputs>>> = {
  XLR: ["XLR", "in"],
  "two TRS": ["left and right jacks", ...pair],
};

/** Which input of what ends the way takes an end of a lead. */
function inputFor(side: Side, choice: LeadChoice): Inputs {
  const { end } = side;
  const loaded = choice.by === "load box" || choice.by === "meter";
  if (end === "TRS socket") return inputs.TRS;
  if (loaded) return loads[end] ?? inputs[end];
  return isBalanced(side, choice) ? ["balanced left and right jacks", "in left"] : inputs[end];
}

/** What a lead leads to: headphones behind an amplifier, or an instrument. A socket at its end takes a lead that is known to be good. */
export function farFor(side: Side, choice: LeadChoice): Far {
  const [input, ...sockets] = inputFor(side, choice);
  const box = boxFor(input, choice);
  const last = box.parts[0]?.id ?? "";
  const into = (part: string, plugs: readonly string[]): readonly Connection[] =>
    plugs.map((plug, at) => ({ part, plug, into: last, socket: sockets[at] ?? "" }));
  if (side.end !== "TRS socket")
    return { ...box, plugged: [...into("lead", side.names), ...box.plugged] };
  const [socket = ""] = side.names;
  return {
    ...box,
    parts: [{ id: "patch lead", kind: "TRS lead" }, ...box.parts],
    plugged: [
      { part: "patch lead", plug: "near", into: "lead", socket },
      ...into("patch lead", ["far"]),
      ...box.plugged,
    ],
  };
}

function boxFor(input: string, { by, grounds }: LeadChoice): Far {
  const settings = { input, ...(grounds === undefined ? {} : { grounds }) };
  switch (by) {
    case "return":
      return alone({ id: "line inputs", kind: "line inputs", settings });
    case "load box":
    case "meter":
      return alone({ id: "load box", kind: "load box", settings });
    case "ear":
      return {
        parts: [
          { id: "amplifier", kind: "headphone amplifier", settings: { input } },
          { id: "headphones", kind: "headphones" },
        ],
        plugged: [{ part: "headphones", plug: "plug", into: "amplifier", socket: "output 1" }],
        end: "headphones",
      };
  }
}

const alone = (part: RigPart): Far => ({ parts: [part], plugged: [], end: part.id });
