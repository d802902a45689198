import { powered } from "./boxes.ts";
import { linkIn } from "./inputs.ts";
import { kindOf } from "./kind.ts";
import type { Control } from "./part.ts";
import { powerControls, powerFaults } from "./power.ts";
import { inMono, inOrder, turnedBy } from "./sides.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/** Left and right as the ears get them: a call profile is mono, in both ears or in the left one alone. */
function through(control: Control) {
  const gain = control("power") * control("joined") * control("volume");
  return {
    ...inOrder(
      inMono(control("call")),
      turnedBy(control("left driver"), control("right driver")),
      turnedBy(gain, gain),
    ),
  };
}

/** A call profile takes the place of the music profile for as long as a microphone is open. */
const slot = { slot: "call", repair: 20 };
const hidden = { seen: false, repair: 60 };

/** A wireless headset: its own receiver, amplifier and battery. Odds: common practice, no source. */
export const wirelessHeadset = kindOf("headphones", {}, () => ({
  plugs: [linkIn.plug],
  sockets: [],
  body: [...powered("battery"), ...linkIn.body],
  takes: linkIn.takes,
  controls: {
    ...powerControls,
    call: 0,
    joined: 1,
    volume: 1,
    "left driver": 1,
    "right driver": 1,
  },
  through,
  faults: [
    setFault("call profile in both ears", { call: 1 }, 120, slot),
    setFault("call profile in one ear", { call: 1, "right driver": 0 }, 40, slot),
    setFault("joined to another device", { joined: 0 }, 80, { repair: 30 }),
    switchFault("volume down", "volume", 0, 60),
    ...powerFaults("battery", 100),
    setFault("left driver dead", { "left driver": 0 }, 15, hidden),
    setFault("right driver dead", { "right driver": 0 }, 15, hidden),
  ],
  look: 10,
}));
