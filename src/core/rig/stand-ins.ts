import { outputName } from "#core/parts/amplifier.ts";
import {
  byName,
  type Drawing,
  mixerDesk,
  numbered,
  overLinks,
  type Piece,
  part,
  plug,
  seated,
  sets,
  together,
  twoLeads,
} from "./pieces.ts";
import type { Rig } from "./rig.ts";

/** What a listener's headphones may hang on, as somebody knows it who never drew the rig. */
export const standInFeeds = [
  "laptop",
  "phone",
  "amplifier after a mixer",
  "belt pack",
  "personal mixer",
  "don't know",
] as const;
export type StandInFeed = (typeof standInFeeds)[number];

/** Who can be asked for a stand-in at most: as many as the largest amplifier has outputs. */
export const mostListeners = 64;

/** What is known of a rig that nobody has drawn. */
export interface Known {
  readonly feed: StandInFeed;
  /** How many hear it, from 1 to `mostListeners`. */
  readonly listeners: number;
  /** Left out where that is not known: then what usually hangs there. */
  readonly worn?: "headphones" | "in-ears";
}

type Feed = Exclude<StandInFeed, "don't know">;

/** Most splitters have two sockets. Common practice, no source. */
const mostOnSplitter = 2;

/** Alone: a computer; several: an amplifier, as one socket does not serve everybody. Common practice, no source. */
const commonest = (listeners: number): Feed =>
  listeners === 1 ? "laptop" : "amplifier after a mixer";

/**
 * A rig to go by while the real one is not drawn, of what usually stands there (common practice, no source), with short names for its parts.
 * Another drawing corrects it. Throws a RangeError on a number of listeners that it cannot have.
 */
export function standIn({ feed, listeners, worn }: Known): Rig {
  if (!Number.isInteger(listeners) || listeners < 1 || listeners > mostListeners)
    throw new RangeError(`${listeners} listeners: a whole number from 1 to ${mostListeners}`);
  const fed = fedBy(feed, listeners);
  const wear = worn ?? (fed === "belt pack" ? "in-ears" : "headphones");
  const seats = listeners === 1 ? ["1 you"] : numbered(listeners, (seat) => `${seat}`);
  const name = feed === "don't know" ? "Rig not known" : `Fed from: ${feed}`;
  return seated(name, pieces(fed, { call: byName, seats: listeners }, wear), seats);
}

/** Too many for a splitter hang on an amplifier. */
function fedBy(feed: StandInFeed, listeners: number): Feed {
  if (feed === "don't know") return commonest(listeners);
  const straight = feed === "laptop" || feed === "phone";
  return straight && listeners > mostOnSplitter ? "amplifier after a mixer" : feed;
}

type Worn = NonNullable<Known["worn"]>;

function pieces(feed: Feed, drawing: Drawing, worn: Worn): Piece {
  const { seats } = drawing;
  switch (feed) {
    case "laptop":
    case "phone":
      return straightFrom(feed, drawing, worn);
    case "amplifier after a mixer":
      return together(
        desk,
        {
          parts: [
            part("lead", "TRS lead"),
            part("amplifier", "headphone amplifier", { outputs: seats }),
          ],
          plugged: [
            plug("lead", "near", "mixer", "phones"),
            plug("lead", "far", "amplifier", "in"),
          ],
        },
        sets(drawing, worn, "6.35 mm", (seat) => ["amplifier", outputName(seat - 1)]),
      );
    case "belt pack":
    case "personal mixer":
      return fromTheMainPair(feed, drawing, worn);
  }
}

function straightFrom(kind: "laptop" | "phone", drawing: Drawing, worn: Worn): Piece {
  const { seats } = drawing;
  const source: Piece = { parts: [part("source", kind)], plugged: [] };
  if (seats === 1)
    return together(
      source,
      sets(drawing, worn, "3.5 mm", () => ["source", "phones"]),
    );
  return together(
    source,
    {
      parts: [part("splitter", "splitter", { sets: seats, size: "3.5 mm" })],
      plugged: [plug("splitter", "plug", "source", "phones")],
    },
    sets(drawing, worn, "3.5 mm", (seat) => ["splitter", `output ${seat}`]),
  );
}

const desk = mixerDesk({ source: "source", lead: "source lead", mixer: "mixer" });

/** By two leads into a box with a link for each seat's own receiver. */
function fromTheMainPair(
  receiver: "belt pack" | "personal mixer",
  drawing: Drawing,
  worn: Worn,
): Piece {
  const [sender, size] =
    receiver === "belt pack"
      ? (["transmitter", "3.5 mm"] as const)
      : (["link sender", "6.35 mm"] as const);
  const input = "balanced left and right jacks";
  return together(
    desk,
    twoLeads(drawing, "TRS lead", ["mixer", "main"], sender),
    overLinks(drawing, {
      sender: part(sender, sender, { links: drawing.seats, input }),
      receiver: (seat) => part(`${receiver} ${seat}`, receiver, { size }),
      worn,
      size,
    }),
  );
}
