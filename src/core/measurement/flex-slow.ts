import { toDecibels } from "#core/units/decibels.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";
import type { FlexChange } from "./flex-names.ts";
import type { FlexReading } from "./flex-reading.ts";

/** What is told of a level. */
const step: Decibels = 1;
/** And of crosstalk, against a whole side; one tenth is -20 dB. */
const crossStep = 0.1;
/** Changes kept; the oldest give way. */
const mostKept = 200;

/** Levels that went away slowly: a contact that gains resistance. */
export class FlexSlow {
  readonly #first: readonly number[];
  /** As they were last told. */
  readonly #told: number[];
  readonly #changes: FlexChange[] = [];
  #dropped = 0;

  constructor(reading: FlexReading) {
    this.#first = levelsOf(reading);
    this.#told = [...this.#first];
  }

  /** Compares what is expected now with what was told last. */
  look(reading: FlexReading, at: Seconds): void {
    const now = levelsOf(reading);
    for (const which of [0, 1] as const) {
      const [size = 0, told = 0, first = 0] = [now[which], this.#told[which], this.#first[which]];
      if (Math.abs(toDecibels(size / told)) < step) continue;
      this.#told[which] = size;
      this.#tell({ at, of: which === 0 ? "left" : "right", level: toDecibels(size / first) });
    }
    const [over = 0, toldOver = 0] = [now[2], this.#told[2]];
    if (Math.abs(over - toldOver) < crossStep) return;
    this.#told[2] = over;
    this.#tell({ at, of: "crosstalk", level: toDecibels(Math.abs(over)) });
  }

  #tell(change: FlexChange): void {
    this.#changes.push(change);
    if (this.#changes.length <= mostKept) return;
    this.#changes.shift();
    this.#dropped += 1;
  }

  get changes(): readonly FlexChange[] {
    return this.#changes;
  }

  /** Those that gave way. */
  get dropped(): number {
    return this.#dropped;
  }
}

/** Sizes of both sides, and the greater crosstalk, signed; nothing where a side has no channel of its own. */
function levelsOf(reading: FlexReading): readonly number[] {
  const over = reading.sides.map(({ weights, crosstalk }) =>
    [0, 1].reduce((sum, at) => sum + (weights[at] ?? 0) ** 2 * (crosstalk[2 * at] ?? 0), 0),
  );
  const [left = 0, right = 0] = over;
  return [
    Math.sqrt(reading.power(0)),
    Math.sqrt(reading.power(1)),
    Math.abs(left) > Math.abs(right) ? left : right,
  ];
}
