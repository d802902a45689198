import { measureReturn } from "#core/measurement/measured.ts";
import type { NotMeasured, ReturnMeasurement } from "#core/measurement/return.ts";
import { preferStarted } from "#tests/support/preferred.ts";
import type { Pulse } from "#tests/support/pulse.ts";
import { pause } from "./desk.ts";
import type { OpenPage } from "./listeners.ts";
import { captureOf, type Packed } from "./packed.ts";
import { startWire, type Wire } from "./wire.ts";

/** A page with an output and an input of its own, for wires between them. */
export interface Lane {
  readonly page: OpenPage;
  readonly desk: string;
  readonly far: string;
}

/** What one wire gave: the level that it was sent at, and the measurement. */
export interface Measured {
  readonly level: number;
  readonly result: ReturnMeasurement | NotMeasured | { readonly refused: "lost" };
  /** What was refused before, where a busy machine put silence in. */
  readonly before: readonly string[];
}

/** A wire needs so long until it carries; seconds. */
const carrying = 1.5;
/** Beside other work a browser or a wire may be late: a measurement that was refused for it is taken again. */
const tries = 6;
const busy: readonly string[] = ["gaps", "clocks", "processed", "cut short", "lost"];

/** Measures through a wire once. */
async function once(pulse: Pulse, lane: Lane, wire: Wire): Promise<Omit<Measured, "before">> {
  const running = startWire(pulse, lane.desk, lane.far, wire);
  await pause(carrying);
  await lane.page.click("#measure");
  // A browser begins its sound in threads of its own, and gives them a priority of its own.
  await pause(0.3);
  preferStarted();
  const packed = await lane.page.ask<Packed>("stage.packed()");
  await running.stop();
  const level = Number(packed.level);
  if (packed.why === "lost") return { level, result: { refused: "lost" } };
  if (packed.ended !== "measured") throw new Error(JSON.stringify(packed));
  return { level, result: measureReturn(captureOf(packed)) };
}

interface Waiting {
  readonly name: string;
  readonly wire: Wire;
  readonly before: readonly string[];
}

/** Measures through all wires, as many at once as there are lanes; what was refused for a busy machine comes again at the end. */
export async function allMeasured(
  pulse: Pulse,
  lanes: readonly Lane[],
  wires: Readonly<Record<string, Wire>>,
): Promise<ReadonlyMap<string, Measured>> {
  const waiting: Waiting[] = Object.entries(wires).map(([name, wire]) => ({
    name,
    wire,
    before: [],
  }));
  const results = new Map<string, Measured>();
  const work = async (lane: Lane) => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      const { name, wire, before } = next;
      const { level, result } = await once(pulse, lane, wire);
      const why = "refused" in result ? result.refused : "";
      if (busy.includes(why) && before.length + 1 < tries) {
        waiting.push({ name, wire, before: [...before, why] });
        // An output that once came late may stay so: another one.
        await lane.page.ask("stage.measurer.use(stage.measurer.world().route)");
      } else results.set(name, { level, result, before });
    }
  };
  await Promise.all(lanes.map(work));
  return results;
}
