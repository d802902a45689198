import type { DecibelsFullScale, Hertz, Seconds } from "#core/units/units.ts";

/** What the sheet says that goes with the sounds as files. */
export interface SheetWords {
  readonly title: (rate: Hertz) => string;
  /** Sound in these files is as loud as the player makes it. */
  readonly cautions: readonly string[];
  readonly levels: string;
  /** A level, with its unit; of silence there is none. */
  readonly level: (level: DecibelsFullScale) => string;
  readonly toHear: (hear: string) => string;
  readonly facts: (duration: Seconds, level: string, peak: string) => string;
  /** From and to which sample it may be looped. */
  readonly loop: (from: number, to: number) => string;
}
