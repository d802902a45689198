import { build, instrumentAt, type Rig } from "#core/rig/rig.ts";
import { fromHeadphoneSocket, fromMainPair } from "#core/rig/rigs.ts";
import { mostListeners, type StandInFeed, standIn } from "#core/rig/stand-ins.ts";
import { type Random, seeded } from "#core/units/random.ts";
import { rigsByHand } from "#tests/reference/rigs-by-hand.ts";

/** One of some things, drawn with even odds. Throws where there is none. */
export function oneOf<Item>(items: readonly Item[], random: Random): Item {
  const item = items[Math.floor(random() * items.length)];
  if (item === undefined) throw new Error("there is nothing to draw from");
  return item;
}

/** Names of so many seats. */
export const seats = (count: number): readonly string[] =>
  Array.from({ length: count }, (_, at) => `seat ${at + 1}`);

/** Those drawn by hand that somebody listens to. */
const listenedTo: readonly Rig[] = rigsByHand.filter((rig) => {
  const built = build(rig);
  return rig.positions.some(({ id }) => instrumentAt(built, id) === undefined);
});

const standingIn =
  (feed: StandInFeed) =>
  (listeners: number): Rig =>
    standIn({ feed, listeners });

/** Every kind of feed, for a number of listeners. */
const feeds: readonly ((listeners: number) => Rig)[] = [
  (count) => fromHeadphoneSocket(`${count} from a headphone socket`, seats(count)),
  (count) => fromMainPair(`${count} from the main pair`, seats(count)),
  standingIn("amplifier after a mixer"),
  standingIn("belt pack"),
  standingIn("personal mixer"),
  standingIn("laptop"),
  standingIn("phone"),
];

/** How many listen: as many small rigs as large ones in each doubling, so that most are small. */
const listeners = (random: Random, most: number): number =>
  Math.min(most, Math.floor(2 ** (random() * Math.log2(most + 1))));

/**
 * The rig of a seed: two in three of a feed with 1 to `most` listeners, one in three drawn by hand. Equal seeds give equal rigs, each time
 * made anew, so that nothing that was worked out for one is kept for ever.
 */
export function rigOf(seed: number, most: number = mostListeners): Rig {
  const random = seeded(seed * 7919 + 1);
  if (random() < 1 / 3) {
    const fitting = listenedTo.filter(({ positions }) => positions.length <= most);
    return { ...oneOf(fitting, random) };
  }
  return oneOf(feeds, random)(listeners(random, most));
}
