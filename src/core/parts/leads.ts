import { kindOf } from "./kind.ts";
import { leadOf } from "./lead.ts";
import { odds, twoContacts } from "./lead-faults.ts";
import {
  monoSum,
  pairOf,
  straight,
  toBoth,
  toRight,
  twoXlrToTrs,
  xlrToTrs,
} from "./lead-shapes.ts";
import { point } from "./part.ts";
import { jackSizes } from "./plugs.ts";
import { runParameters } from "./wire.ts";

/** Of a jack at one end. */
export const jackSize = { choices: jackSizes, typical: "6.35 mm" } as const;
const bothEnds = { ...runParameters, nearSize: jackSize, farSize: jackSize };
const oneEnd = { ...runParameters, size: jackSize };

/** Tip, ring and sleeve, plug to plug: unbalanced stereo or balanced mono, by what it is plugged into. */
export const trsLead = kindOf("lead", bothEnds, ({ nearSize, farSize, ...run }) =>
  leadOf({ ...straight("TRS", nearSize, farSize), more: [twoContacts("near", "far")] }, run),
);

/** Tip and sleeve, plug to plug. */
export const tsLead = kindOf("lead", bothEnds, ({ nearSize, farSize, ...run }) =>
  leadOf(straight("TS", nearSize, farSize), run),
);

/** One signal to both sides: tip to tip and ring. The cure for a mono send into a stereo input. `size` is the TRS plug's. */
export const oneToBoth = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(toBoth("TS", size), run),
);

/** The same with a three-contact plug at the output, its ring left alone: an actively driven cold leg is not shorted. */
export const oneToBothRingUnused = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(toBoth("TRS", size), run),
);

/** One signal to the right ear on purpose. `size` is the TRS plug's; to the left ear a TS lead serves. */
export const oneToRight = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(toRight("TS", size), run),
);

/** Two TS plugs paralleled into one tip: a mono sum, not a stereo lead. */
export const monoSumLead = kindOf("lead", runParameters, (run) => leadOf(monoSum(), run));

/** Red is right (handbook, section 2). */
export const rcaPairLead = kindOf("lead", runParameters, (run) =>
  leadOf(pairOf("RCA", "RCA"), run),
);

/** Left and right jacks to left and right RCA. */
export const twoTsToTwoRca = kindOf("lead", runParameters, (run) =>
  leadOf(pairOf("TS", "RCA"), run),
);

/** Pins 1, 2 and 3 straight through: one balanced signal. */
export const xlrLead = kindOf("lead", runParameters, (run) =>
  leadOf(straight("XLR", "6.35 mm", "6.35 mm"), run),
);

/** Balanced mono on tip and ring. `size` is the TRS plug's. */
export const xlrToTrsLead = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(xlrToTrs(size), run),
);

/** A stereo pair of balanced outputs to one stereo plug, the cold legs left alone. */
export const twoXlrToTrsLead = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(twoXlrToTrs(size, "unused"), run),
);

/** The same with the cold legs on the screen, as cross-coupled and transformer outputs want them (handbook, section 4). */
export const twoXlrToTrsLeadColdGrounded = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(twoXlrToTrs(size, "to pin 1"), run),
);

/** One balanced output to both sides: pin 2 to tip and ring, pin 3 left alone. */
export const xlrToBoth = kindOf("lead", oneEnd, ({ size, ...run }) =>
  leadOf(toBoth("XLR", size), run),
);

/**
 * From a plug to an in-line socket. The coiled ones have thin wire: AWG 28 (common practice, no source). `size` is that of both
 * ends.
 */
export const extensionLead = kindOf(
  "lead",
  {
    ...oneEnd,
    gauge: { ...runParameters.gauge, typical: 28 },
  },
  ({ size, ...run }) =>
    leadOf(
      {
        ends: [
          { name: "plug", kind: "TRS", size },
          { name: "socket", kind: "TRS", size, socket: "TRS" },
        ],
        wires: (["tip", "ring", "sleeve"] as const).map((contact) => [
          contact,
          point("plug", contact),
          point("socket", contact),
        ]),
        cores: [[point("socket", "tip"), point("socket", "ring")]],
        weak: [{ at: "body", end: "socket", odds: odds.lead }],
        more: [twoContacts("plug")],
      },
      run,
    ),
);
