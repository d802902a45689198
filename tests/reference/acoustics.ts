import { catalogue } from "#core/parts/catalogue.ts";
import type { Probe } from "#core/parts/part.ts";
import { controlOf } from "#core/rig/controls.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import type { Hertz, Ohms } from "#core/units/units.ts";
import type { Writer } from "./deck.ts";

/** Of every filter here; its capacitor follows from its corner. */
const series: Ohms = 1000;
const faradsAt = (corner: Hertz) => 1 / (2 * Math.PI * corner * series);

/**
 * From the drivers of in-ears to the ears, as resistors and capacitors behind ideal amplifiers: a low driver falls off where the crossover
 * lets the high one in, and a seal that leaks lets the low end out. Answers where the ears stand, left first.
 */
export function atTheEars(
  rig: BuiltRig,
  id: string,
  faults: readonly RigFault[],
  writer: Writer,
  drivers: readonly Probe[],
): Probe[] {
  const control = controlOf(rig, id, faults);
  const corner = crossoverOf(rig, id);
  return (["left", "right"] as const).map((side, at) => {
    const low = writer.sum("0", [[probeAt(drivers, at), control(`${side} level`)]]);
    const [high] = corner === undefined ? [] : [probeAt(drivers, at + 2)];
    const both =
      corner === undefined || high === undefined
        ? low
        : writer.sum(lowPassed(writer, low, corner), [[high, control(`${side} level`)]]);
    const leak = control(`${side} leak`);
    return { plus: leak === 0 ? both : highPassed(writer, both, leak), minus: "0" };
  });
}

function probeAt(drivers: readonly Probe[], at: number): Probe {
  const probe = drivers[at];
  if (probe === undefined) throw new Error(`in-ears without a driver ${at}`);
  return probe;
}

/** Where the high driver comes in, by its own capacitor and ohms; nothing where one driver does it all. */
function crossoverOf(rig: BuiltRig, id: string): Hertz | undefined {
  const said = rig.parts.find((part) => part.id === id)?.settings ?? {};
  const { parameters } = catalogue["in-ears"];
  const value = (name: string) => said[name] ?? parameters[name]?.typical;
  if (value("drivers") === "one a side") return undefined;
  return 1 / (2 * Math.PI * Number(value("ohms")) * Number(value("crossover")));
}

/** A resistor, then a capacitor to ground, and an ideal amplifier that loads neither. */
function lowPassed(writer: Writer, from: string, corner: Hertz): string {
  const after = writer.inner();
  writer.line("r", from, after, series);
  writer.line("c", after, "0", faradsAt(corner));
  return writer.sum("0", [[{ plus: after, minus: "0" }, 1]]);
}

/** A capacitor, then a resistor to ground. */
function highPassed(writer: Writer, from: string, corner: Hertz): string {
  const after = writer.inner();
  writer.line("c", from, after, faradsAt(corner));
  writer.line("r", after, "0", series);
  return after;
}
