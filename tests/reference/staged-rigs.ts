import type { PartKind } from "#core/parts/catalogue.ts";
import { type Balancing, balancings } from "#core/parts/stages.ts";
import type { Rig } from "#core/rig/rig.ts";
import { drawn, listener, turn, twoLeads } from "./drawn.ts";

const supplies = ["mains-earthed", "floating", "battery"] as const;
const forks: readonly PartKind[] = [
  "insert Y",
  "insert Y with TRS plugs, rings unused",
  "insert Y with TRS plugs, ring to sleeve",
];
const ones: readonly PartKind[] = [
  "one-to-both lead",
  "one-to-both lead with TRS plug, ring unused",
  "one-to-right lead",
  "TRS lead",
  "TS lead",
];

/** A mixer's monitors by an insert Y, its mains straight into a balanced input, its send by one lead. */
const fromMixer = (by: Balancing, at: number): Rig =>
  drawn(
    `mixer, ${by}`,
    ["monitors's", "mains's", "send's"],
    {
      parts: {
        mixer: ["mixer", { balancing: by, supply: turn(supplies, at) }],
        fork: turn(forks, at),
        one: turn(ones, at),
      },
      plugged: [
        "fork: left > mixer: monitor left",
        "fork: right > mixer: monitor right",
        "fork: stem > monitors: in",
        "one: near > mixer: send",
        "one: far > send: in",
      ],
    },
    twoLeads(
      "TRS lead",
      "main",
      ["mixer", "main left", "main right"],
      ["mains", "in left", "in right"],
    ),
    listener("monitors", ["headphone amplifier", { supply: turn(supplies, at + 1) }]),
    listener("mains", ["headphone amplifier", { input: "balanced left and right jacks" }]),
    listener("send", ["headphone amplifier", { supply: turn(supplies, at + 2) }]),
  );

/** An interface through a processor into two balanced jacks. */
const throughProcessor = (by: Balancing, at: number): Rig =>
  drawn(
    `interface and processor, ${by}`,
    ["amplifier's"],
    {
      parts: {
        interface: ["sound interface", { balancing: by, supply: turn(supplies, at + 1) }],
        processor: ["processor", { balancing: by, supply: turn(supplies, at) }],
      },
      plugged: [],
    },
    twoLeads(
      "TRS lead",
      "first",
      ["interface", "line left", "line right"],
      ["processor", "in left", "in right"],
    ),
    twoLeads(
      "TRS lead",
      "second",
      ["processor", "out left", "out right"],
      ["amplifier", "in left", "in right"],
    ),
    listener("amplifier", [
      "headphone amplifier",
      { input: "balanced left and right jacks", supply: turn(supplies, at + 2) },
    ]),
  );

const stems: readonly PartKind[] = [
  "two XLR to TRS lead, pin 3 unused",
  "two XLR to TRS lead, pin 3 to pin 1",
];

/** A console's mains through a processor to a belt pack, its mix to one stereo jack, and the same by a digital link to a stage box. */
const fromConsole = (by: Balancing, at: number): Rig =>
  drawn(
    `console, ${by}`,
    ["in-ears", "mix's", "stage's"],
    {
      parts: {
        console: ["console", { balancing: by, supply: turn(supplies, at + 1) }],
        processor: [
          "processor",
          { connector: "XLR", balancing: by, supply: turn(supplies, at + 2) },
        ],
        transmitter: ["transmitter", { input: "XLR pair", supply: turn(supplies, at) }],
        pack: "belt pack",
        "in-ears": "in-ears",
        stem: turn(stems, at),
        box: ["stage box", { balancing: by, supply: turn(supplies, at) }],
      },
      plugged: [
        "pack: link > transmitter: link 1",
        "in-ears: plug > pack: phones",
        "stem: left > console: mix left",
        "stem: right > console: mix right",
        "stem: stem > mix: in",
        "box: link > console: digital 1",
      ],
    },
    twoLeads(
      "XLR lead",
      "first",
      ["console", "main left", "main right"],
      ["processor", "in left", "in right"],
    ),
    twoLeads(
      "XLR lead",
      "second",
      ["processor", "out left", "out right"],
      ["transmitter", "in left", "in right"],
    ),
    twoLeads(
      "XLR lead",
      "third",
      ["box", "out left", "out right"],
      ["stage", "in left", "in right"],
    ),
    listener("mix", ["headphone amplifier", { supply: turn(supplies, at) }]),
    listener("stage", ["headphone amplifier", { input: "XLR pair", supply: turn(supplies, at) }]),
  );

/** Every way to drive the legs of an output, at every box that offers the choice, by every lead that is made for it. */
export const stagedRigs: readonly Rig[] = balancings.flatMap((by, at) => [
  fromMixer(by, at),
  throughProcessor(by, at),
  fromConsole(by, at),
]);
