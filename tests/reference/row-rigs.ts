import type { Supply } from "#core/parts/boxes.ts";
import type { Rig } from "#core/rig/rig.ts";
import { drawn, listener } from "./drawn.ts";

/** Three boxes on two stereo leads: the middle one stands on whatever earth its neighbours have. */
export const inARow = (first: Supply, middle: Supply, last: Supply): Rig =>
  drawn(
    `${first}, ${middle} and ${last} in a row`,
    ["box's"],
    {
      parts: {
        laptop: ["laptop", { supply: first, socket: "TRS" }],
        one: ["TRS lead", { nearSize: "3.5 mm" }],
        middle: ["headphone amplifier", { supply: middle }],
        two: "TRS lead",
      },
      plugged: [
        "one: near > laptop: phones",
        "one: far > middle: in",
        "two: near > middle: output 1",
        "two: far > box: in",
      ],
    },
    listener("box", ["headphone amplifier", { supply: last }]),
  );

export const rowRigs: readonly Rig[] = [
  inARow("mains-earthed", "floating", "mains-earthed"),
  inARow("mains-earthed", "battery", "floating"),
  inARow("floating", "floating", "mains-earthed"),
  inARow("battery", "mains-earthed", "battery"),
];
