import type { Granted } from "#audio/granted.ts";
import type { FlexReturn } from "#core/measurement/flex-names.ts";
import { FlexWatch } from "#core/measurement/flex-watch.ts";
import type { Seconds } from "#core/units/units.ts";

/** What is kept of the strip at its finest, and shown of it while it runs. */
export const shown: Seconds = 12;
/** From the opening of the input, or from a step of the level, until the signal is surely back and even. */
const settling: Seconds = 1;

/** Takes what comes back to the watch, and begins the watch anew where the level was moved. */
export class FlexTap {
  readonly #returns: FlexReturn;
  #watch: FlexWatch | undefined;
  #granted: Granted | undefined;
  #at: Seconds = 0;
  #from: Seconds = settling;

  constructor(returns: FlexReturn) {
    this.#returns = returns;
  }

  /** Undefined until the signal had time to come round. */
  get watch(): FlexWatch | undefined {
    return this.#watch;
  }
  get granted(): Granted | undefined {
    return this.#granted;
  }

  readonly onOpen = (granted: Granted): void => {
    this.#granted = granted;
  };

  readonly onBlock = (channels: readonly Float32Array[], at: Seconds): void => {
    this.#at = at;
    const rate = this.#granted?.rate;
    if (at < this.#from || rate === undefined) return;
    const two = channels.slice(0, 2);
    this.#watch ??= new FlexWatch({
      rate,
      channels: two.length > 1 ? 2 : 1,
      returns: this.#returns,
      live: shown,
    });
    this.#watch.push(two);
  };

  /** Learns anew how things are at first. */
  restart(): void {
    this.#watch = undefined;
    this.#from = this.#at + settling;
  }
}
