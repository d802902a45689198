import { catalogue } from "#core/parts/catalogue.ts";
import { build, type Rig, wornAt } from "#core/rig/rig.ts";
import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Ohms } from "#core/units/units.ts";
import type { Usual } from "./figures.ts";
import { type Feed, feedTo } from "./stages.ts";

/** How much higher the impedance of a driver is where it resonates, or where it is most. Common practice, no source. */
const peaks: Usual = { low: 1.05, typical: 1.4, high: 2.5 };

/** What stands in series with a driver, and what that does to the tone. */
export interface ToneChange {
  /** All that one driver sees, ohms: the output, the lead, and what hangs beside. */
  readonly source: Ohms;
  /** The driver's own over that. */
  readonly damping: number;
  /** By how much louder it is where its impedance is highest. */
  readonly bump: Decibels;
  /** The highest impedance that was reckoned with, and whether somebody told it. */
  readonly peak: Ohms;
  readonly told: boolean;
}

/** The setting of what is worn that says its highest impedance. */
export const peakSetting = "peak ohms";

/** The way with drivers of so many ohms. */
function withDrivers(rig: Rig, position: string, ohms: Ohms): Feed | undefined {
  const worn = wornAt(rig, position);
  const parts = rig.parts.map((part) =>
    part.id === worn ? { ...part, settings: { ...part.settings, ohms } } : part,
  );
  return feedTo(build({ ...rig, parts }), position);
}

/** The most that a driver gets of one volt. */
const received = (feed: Feed | undefined): number =>
  Math.max(
    0,
    ...(feed?.stages.at(-1)?.passes ?? []).flatMap((row) =>
      row.map(({ re, im }) => Math.hypot(re, im)),
    ),
  );

/** What a source's resistance does to the tone at a position, from the circuit solved with drivers of several impedances. Nothing where nothing has drivers of its own. */
export function toneChangeAt(rig: Rig, feed: Feed): ToneChange | undefined {
  const { ohms, part } = feed.worn;
  const one = rig.parts.find(({ id }) => id === part);
  const range = one && catalogue[one.kind].parameters.ohms;
  if (range === undefined || !("unit" in range)) return undefined;
  const own = one?.settings?.[peakSetting];
  const told = typeof own === "number" && own > 0;
  const peak = told ? own : peaks.typical * ohms;
  const [now, far] = [ohms, range.most].map((each) =>
    received(withDrivers(rig, feed.position, each)),
  );
  if (now === undefined || far === undefined || now === 0 || far === 0 || ohms >= range.most)
    return undefined;
  // Of one voltage behind one resistance, what drivers of two impedances get.
  const source = Math.max(0, (far - now) / (now / ohms - far / range.most));
  const share = (driver: Ohms) => driver / (driver + source);
  return {
    source,
    damping: ohms / Math.max(source, 1e-3),
    bump: toDecibels(share(peak) / share(ohms)),
    peak,
    told,
  };
}
