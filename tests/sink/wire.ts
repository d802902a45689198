import { preferred } from "#tests/support/preferred.ts";
import { type Started, started } from "#tests/support/programs.ts";
import type { Pulse } from "#tests/support/pulse.ts";

/** What a wire does to what goes through it. */
export interface Wire {
  /** As `sox` calls it. */
  readonly effects: string;
  /** What the far end adds of its own besides, as `sox` makes it. */
  readonly added?: string;
  /** The noise of each side of the far end in decibels of full scale; that of a good converter unless given. */
  readonly noise?: number;
}

const rate = 48_000;
const raw = `-t raw -r ${rate} -e floating-point -b 32 -c 2 -`;
const stream = `--raw --format=float32le --rate=${rate} --channels=2`;
/** White noise as `sox` makes it is evenly spread: this much softer than its peak. */
const evenly = 10 * Math.log10(3);
const converter = -95;
/** Seconds that a wire lasts at most. */
const life = 120;

/** Leads what one output plays to another one, through a wire, and there into a converter that has noise of its own on each side. */
export function startWire(pulse: Pulse, from: string, to: string, wire: Wire): Started {
  const { effects, added, noise = converter } = wire;
  const made = (what: string) => `-v 1 "|sox -n -r ${rate} -c 2 -p synth ${life} ${what}"`;
  const own = made(`whitenoise whitenoise vol ${noise + evenly}dB`);
  const line = [
    `parec --device=${from}.monitor ${stream} --latency-msec=50`,
    `sox --buffer 2048 ${raw} ${raw} ${effects}`,
    `sox --buffer 2048 -m -v 1 ${raw} ${own} ${added ? made(added) : ""} ${raw}`,
    // Enough in hand that a busy machine is not late.
    `pacat --device=${to} ${stream} --latency-msec=300`,
  ].join(" | ");
  return started(...preferred("bash", ["-c", line]), { env: pulse.env, stdio: "ignore" });
}
