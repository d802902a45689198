import { type Exposure, together, unheard } from "#core/hearing/exposure.ts";
import type { Decibels, Seconds } from "#core/units/units.ts";
import { type Course, energyOf } from "./course.ts";
import {
  afterHand,
  afterTrouble,
  arriving,
  isLowered,
  type Loudness,
  quiet,
  stepped,
} from "./loudness.ts";
import type { Watched } from "./watched.ts";
import type { World } from "./world.ts";

/**
 * How loud it is at each place that is listened at, a seat or the whole table, and how much was heard there. Of the place in
 * hand the world is told.
 */
export class Places {
  readonly #world: Watched<World>;
  #place = "";
  #loudness = quiet;
  readonly #kept = new Map<string, Loudness>();
  readonly #heard = new Map<string, Exposure>();
  /** A hand was on the gear since sound was let in last. */
  #hand = false;

  constructor(world: Watched<World>) {
    this.#world = world;
  }

  /** The level over time at the place in hand. */
  get course(): Course {
    return this.#loudness.course;
  }

  /** A step up or down from now on. */
  step(by: Decibels, now: Seconds): void {
    this.#set(stepped(this.#loudness, by, now));
  }

  handOn(): void {
    this.#hand = true;
  }

  /** As a hand leaves it, where one was on; every other place begins anew, since what all share may be louder now. Before the first sound nothing changes. */
  handOff(sounded: boolean, now: Seconds): void {
    const lowers = this.#hand && sounded;
    this.#hand = false;
    if (!lowers) return;
    this.#kept.clear();
    this.#set(afterHand(this.#loudness, now));
  }

  /** Back to the start level, here and everywhere. */
  calm(): void {
    this.#kept.clear();
    this.#set(afterTrouble(this.#loudness));
  }

  /** Goes to a place. It is never louder there on arrival than it was before. */
  arrive(place: string, now: Seconds): void {
    if (place === this.#place) return;
    this.#kept.set(this.#place, this.#loudness);
    this.#place = place;
    this.#set(arriving(this.#kept.get(place) ?? quiet, this.#loudness, now));
  }

  /** Counts what sounded at the place in hand from one time to another, all the time or a part of it. */
  count(from: Seconds, to: Seconds, part: number): void {
    const more = { seconds: (to - from) * part, energy: energyOf(this.course, from, to) * part };
    this.#heard.set(this.#place, together(this.#exposure, more));
    this.#set(this.#loudness);
  }

  get #exposure(): Exposure {
    return this.#heard.get(this.#place) ?? unheard;
  }

  #set(loudness: Loudness): void {
    this.#loudness = loudness;
    const { to: level } = loudness.course;
    this.#world.change({ level, lowered: isLowered(loudness), exposure: this.#exposure });
  }
}
