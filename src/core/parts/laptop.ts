import { driven, floating, sleeve } from "./boxes.ts";
import type { Part } from "./part.ts";
import { switchFault } from "./switch-faults.ts";

/** Six decibels down on one side: a balance slider that has drifted. */
const drifted = 0.5;
/** Fourteen decibels down: a slider pushed far over. */
const pushed = 0.2;

/**
 * A computer's own output: settings in front of a four-pole socket, 10 Ω a side, on a two-pin supply. Its mono setting is half
 * of left and right in both (common practice, no source).
 */
export const laptop = (): Part => ({
  kind: "laptop",
  plugs: [],
  sockets: [
    {
      name: "phones",
      kind: "four-pole",
      side: "out",
      circuit: [
        driven("phones", "tip", 10, { left: 1 }),
        driven("phones", "ring", 10, { right: 1 }),
        sleeve("phones"),
      ],
    },
  ],
  body: [floating()],
  takes: [],
  controls: { mono: 0, left: 1, right: 1, volume: 1 },
  through: (control) => {
    const own = 1 - control("mono") / 2;
    const other = control("mono") / 2;
    const volume = control("volume");
    return {
      left: [own * control("left") * volume, other * control("left") * volume],
      right: [other * control("right") * volume, own * control("right") * volume],
    };
  },
  faults: [
    switchFault("mono", "mono", 1, 60),
    switchFault("volume down", "volume", 0, 100),
    switchFault("balance hard left", "right", 0, 12),
    switchFault("balance hard right", "left", 0, 12),
    switchFault("balance far to the left", "right", pushed, 8),
    switchFault("balance far to the right", "left", pushed, 8),
    switchFault("balance off to the left", "right", drifted, 20),
    switchFault("balance off to the right", "left", drifted, 20),
  ],
  look: 15,
});
