import { capacitor, resistor } from "./boxes.ts";
import { betweenCores, jointOhms, wireOhms } from "./leads.ts";
import type { Fault, Part } from "./part.ts";
import { point } from "./part.ts";
import { opens, type WireOdds, type Wires, wireFaults } from "./wire-faults.ts";

const odds: WireOdds = { open: 15, short: 3, order: 3, dirt: 5 };

const wire = (name: string, a: string, b: string) => resistor(name, a, b, wireOhms + jointOhms);

/** The stem's wires end in the fork; its plug is where they begin and where a rebuilt one is wired wrongly. */
const stem: Wires = {
  at: "body",
  wire: (contact) => contact,
  end: (contact) => point("fork", contact),
};

/** One of the two thin ends: its own tip and sleeve. */
const leg = (name: string): Wires => ({
  at: name,
  wire: (contact) => `${name} ${contact}`,
  end: (contact) => point(name, contact),
});

/** Both legs soldered to one contact: a mono sum that looks like this lead. */
const joined: Fault = {
  name: "both sides on one contact",
  at: "body",
  edits: [{ edit: "bridge", a: point("fork", "tip"), b: point("fork", "ring"), ohms: 0.1 }],
  weight: 10,
  slot: "body short",
  seen: false,
  repair: 60,
};

/** TRS to two TS: tip to the plug marked left, ring to the one marked right (handbook, section 2). */
export const insertY = (): Part => ({
  kind: "insert Y",
  plugs: [
    { name: "stem", kind: "TRS" },
    { name: "left", kind: "TS" },
    { name: "right", kind: "TS" },
  ],
  sockets: [],
  body: [
    wire("tip", point("stem", "tip"), point("fork", "tip")),
    wire("ring", point("stem", "ring"), point("fork", "ring")),
    wire("sleeve", point("stem", "sleeve"), point("fork", "sleeve")),
    capacitor("cores", point("fork", "tip"), point("fork", "ring"), betweenCores),
    wire("left tip", point("fork", "tip"), point("left", "tip")),
    wire("left sleeve", point("fork", "sleeve"), point("left", "sleeve")),
    wire("right tip", point("fork", "ring"), point("right", "tip")),
    wire("right sleeve", point("fork", "sleeve"), point("right", "sleeve")),
  ],
  takes: [],
  controls: {},
  faults: [
    ...wireFaults(stem, odds),
    ...["left", "right"].flatMap((name) => opens(leg(name), 12, ["tip", "sleeve"])),
    joined,
  ],
  look: 15,
});
