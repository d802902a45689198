import { type Admitted, admit } from "#core/signals/admit.ts";
import { type InstrumentName, instruments } from "#core/signals/instruments.ts";
import { renderSignal } from "#core/signals/render.ts";
import type { Hertz, Seconds } from "#core/units/units.ts";
import type { Programme } from "./programme.ts";

/** The samples that passed gate one, the latest alone: a minute of them is large. */
let kept: { readonly key: string; readonly sound: Admitted | undefined } | undefined;

/**
 * What is for instruments, as it goes into the graph: once from its first sample, or over and over from where it begins to sound.
 * Refused when gate one lets it not pass, or it has no seam to be played over.
 */
export function ofInstrument(
  name: InstrumentName,
  rate: Hertz,
  over: boolean,
): Programme | "refused" {
  const { duration, stretches, loop } = instruments[name];
  const sound = soundOf(name, rate);
  if (sound === undefined || (over && loop === undefined)) return "refused";
  const [first] = stretches(1);
  const leadIn: Seconds = over ? Math.floor((first?.start ?? 0) * rate) / rate : 0;
  return {
    sound,
    loop: over ? loop?.(rate) : undefined,
    leadIn,
    lasts: duration - leadIn,
    sounding: 1,
  };
}

function soundOf(name: InstrumentName, rate: Hertz): Admitted | undefined {
  const key = `${name} ${rate}`;
  if (kept?.key !== key) {
    const sound = admit(renderSignal(instruments[name], rate, 1));
    kept = { key, sound: "refused" in sound ? undefined : sound };
  }
  return kept.sound;
}
