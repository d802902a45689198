import type { Buses, Control, Fault } from "./part.ts";
import {
  apart,
  balanceControls,
  balanced,
  balanceFaults,
  inMono,
  inOrder,
  type Sides,
  turnedBy,
} from "./sides.ts";
import { setFault, switchFault } from "./switch-faults.ts";

/**
 * The settings between a programme and the output of a computer or phone. 'filled': 1 where an application fills both sides, 2 the left alone
 * and 3 the right alone. 'device' is 1 while this output is the chosen one.
 */
export const computerControls = {
  ...balanceControls,
  mono: 0,
  volume: 1,
  filled: 1,
  device: 1,
};

/** An application that mixes to one channel and fills one of the two. */
function filled(which: number): Sides {
  if (which === 2) return { left: [0.5, 0.5], right: [0, 0] };
  return which === 3 ? { left: [0, 0], right: [0.5, 0.5] } : apart;
}

/** What the settings do, from the programme to the output. */
export function computerSides(control: Control): Sides {
  const gain = control("volume") * control("device");
  return inOrder(
    filled(control("filled")),
    turnedBy(gain, gain),
    inMono(control("mono")),
    balanced(control),
  );
}

/** The same as the signals of a part. */
export const computerThrough = (control: Control): Buses => ({ ...computerSides(control) });

/** Settings that stand wrong. Odds: common practice, no source. */
export const computerFaults: readonly Fault[] = [
  switchFault("mono", "mono", 1, 60),
  setFault("call holds the output in mono", { mono: 1 }, 25, { repair: 15 }),
  switchFault("volume down", "volume", 0, 100),
  ...balanceFaults,
  setFault("application fills the left side only", { filled: 2 }, 15, { repair: 30 }),
  setFault("application fills the right side only", { filled: 3 }, 5, { repair: 30 }),
  setFault("wrong output device", { device: 0 }, 60, { repair: 15 }),
];
