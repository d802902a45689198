import type { DecibelsFullScale } from "#core/units/units.ts";

/** A level against full scale, to whole decibels; nothing at all is under −120. */
export const dbfs = (level: DecibelsFullScale): string =>
  level < -120 ? "silent" : `${Math.round(level)} dBFS`.replace("-", "−");
