import { type BadCase, bad } from "./bad-case.ts";
import type { Anything } from "./command.ts";

/** Rigs that cannot be. */
export const badRigs: readonly BadCase[] = [
  bad("no such kind of part", '/rig/parts/0/kind: expected "laptop"', (one) => {
    one.rig.parts[0].kind = "kettle";
  }),
  bad("a person as a part", "/rig/parts/0/kind: expected no person", (one) => {
    one.rig.parts[0].kind = "listener";
  }),
  bad(
    "a setting out of bounds",
    "/rig/parts/4/settings/outputs: expected a whole number from",
    (one) => {
      one.rig.parts[4].settings.outputs = 1.5;
    },
  ),
  bad(
    "a setting that is no choice",
    "/rig/parts/1/settings/stemSize: expected one of 6.35 mm, 3.5 mm",
    (one) => {
      one.rig.parts[1].settings.stemSize = "2 mm";
    },
  ),
  bad(
    "an id that two parts have",
    "/rig/parts/1/id: expected an id that nothing else has",
    (one) => {
      one.rig.parts[1].id = "laptop";
    },
  ),
  bad(
    "plugged into no part",
    "/rig/plugged/0/into: expected the id of a part of the rig",
    (one) => {
      one.rig.plugged[0].into = "stove";
    },
  ),
  bad(
    "a plug that is not there",
    "/rig/plugged/0/plug: expected one of stem, left, right",
    (one) => {
      one.rig.plugged[0].plug = "middle";
    },
  ),
  bad("a socket that is not there", "/rig/plugged/0/socket: expected one of phones", (one) => {
    one.rig.plugged[0].socket = "attic";
  }),
  bad(
    "a socket for two plugs",
    "/rig/plugged/2/socket: expected a socket that nothing above uses",
    (one) => {
      one.rig.plugged[2].socket = one.rig.plugged[1].socket;
    },
  ),
  bad(
    "a plug that does not go in",
    "/rig/plugged/3/socket: expected a socket that a TRS plug goes into",
    (one) => {
      one.rig.parts.push({ id: "desk", kind: "console" });
      one.rig.plugged[3] = { part: "feed lead", plug: "near", into: "desk", socket: "main left" };
    },
  ),
  bad("two boxes drive one", "expected one box that drives headphones 1", (one) => {
    one.rig.parts.push({ id: "split", kind: "splitter" }, { id: "lead 2", kind: "TRS lead" });
    one.rig.plugged = one.rig.plugged.filter(({ part }: Anything) => part !== "headphones 1");
    one.rig.plugged.push(
      { part: "split", plug: "plug", into: "amplifier", socket: "output 1" },
      { part: "lead 2", plug: "near", into: "mixer", socket: "send" },
      { part: "lead 2", plug: "far", into: "split", socket: "output 2" },
      { part: "headphones 1", plug: "plug", into: "split", socket: "output 1" },
    );
  }),
  bad("a feed that goes round", "expected a way to mixer that does not go round", (one) => {
    one.rig.parts.push({ id: "round", kind: "TRS lead" });
    one.rig.plugged = one.rig.plugged.filter(({ part }: Anything) => part !== "insert lead");
    one.rig.plugged.push(
      { part: "round", plug: "near", into: "mixer", socket: "send" },
      { part: "round", plug: "far", into: "mixer", socket: "1" },
    );
  }),
  bad("nobody wears anything", "/rig/positions/0/wears: expected the id of a part", (one) => {
    one.rig.positions[0].wears = "hat";
  }),
  bad(
    "somebody wears the mixer",
    "/rig/positions/0/wears: expected headphones, in-ears or an instrument",
    (one) => {
      one.rig.positions[0].wears = "mixer";
    },
  ),
  bad(
    "two wear one set",
    "/rig/positions/1/wears: expected headphones that nobody else wears",
    (one) => {
      one.rig.positions[1].wears = one.rig.positions[0].wears;
    },
  ),
  bad(
    "headphones that hang in the air",
    "/rig/positions/2/wears: expected headphones that are plugged in",
    (one) => {
      one.rig.plugged.pop();
    },
  ),
  bad("nobody listens", "/rig/positions: expected at least one position", (one) => {
    one.rig.positions = [];
  }),
];
