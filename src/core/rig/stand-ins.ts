import { outputName } from "#core/parts/amplifier.ts";
import type { JackSize } from "#core/parts/plugs.ts";
import type { Rig } from "./rig.ts";
import { numbered, type Piece, part, plug, sets, together } from "./stand-in-pieces.ts";

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
  const { parts, plugged } = pieces(fed, listeners, wear);
  return {
    name: feed === "don't know" ? "Rig not known" : `Fed from: ${feed}`,
    parts,
    plugged,
    positions: numbered(listeners, (seat) => ({
      id: `position ${seat}`,
      name: listeners === 1 ? "1 you" : `${seat}`,
      wears: `${wear} ${seat}`,
    })),
  };
}

/** Too many for a splitter hang on an amplifier. */
function fedBy(feed: StandInFeed, listeners: number): Feed {
  if (feed === "don't know") return commonest(listeners);
  const straight = feed === "laptop" || feed === "phone";
  return straight && listeners > mostOnSplitter ? "amplifier after a mixer" : feed;
}

function pieces(feed: Feed, listeners: number, worn: string): Piece {
  switch (feed) {
    case "laptop":
    case "phone":
      return straightFrom(feed, listeners, worn);
    case "amplifier after a mixer":
      return together(
        mixer,
        {
          parts: [
            part("lead", "TRS lead"),
            part("amplifier", "headphone amplifier", { outputs: listeners }),
          ],
          plugged: [plug("lead: near", "mixer", "phones"), plug("lead: far", "amplifier", "in")],
        },
        sets(listeners, worn, "6.35 mm", (seat) => ["amplifier", outputName(seat - 1)]),
      );
    case "belt pack":
      return overLinks("transmitter", "belt pack", "3.5 mm", listeners, worn);
    case "personal mixer":
      return overLinks("link sender", "personal mixer", "6.35 mm", listeners, worn);
  }
}

function straightFrom(kind: "laptop" | "phone", listeners: number, worn: string): Piece {
  const source: Piece = { parts: [part("source", kind)], plugged: [] };
  if (listeners === 1)
    return together(
      source,
      sets(1, worn, "3.5 mm", () => ["source", "phones"]),
    );
  return together(
    source,
    {
      parts: [part("splitter", "splitter", { sets: listeners, size: "3.5 mm" })],
      plugged: [plug("splitter: plug", "source", "phones")],
    },
    sets(listeners, worn, "3.5 mm", (seat) => ["splitter", `output ${seat}`]),
  );
}

/** What plays, on two channels of a mixer. */
const mixer: Piece = {
  parts: [
    part("source", "laptop"),
    part("source lead", "insert Y", { stemSize: "3.5 mm" }),
    part("mixer", "mixer", { balancing: "actively balanced" }),
  ],
  plugged: [
    plug("source lead: stem", "source", "phones"),
    plug("source lead: left", "mixer", "1"),
    plug("source lead: right", "mixer", "2"),
  ],
};

/** From the main pair by two leads into a box with a link for each seat's own receiver. */
function overLinks(
  sender: "transmitter" | "link sender",
  receiver: "belt pack" | "personal mixer",
  size: JackSize,
  listeners: number,
  worn: string,
): Piece {
  const pack = (seat: number) => `${receiver} ${seat}`;
  return together(
    mixer,
    {
      parts: [
        part("left lead", "TRS lead"),
        part("right lead", "TRS lead"),
        part(sender, sender, { links: listeners, input: "balanced left and right jacks" }),
        ...numbered(listeners, (seat) => part(pack(seat), receiver, { size })),
      ],
      plugged: [
        ...(["left", "right"] as const).flatMap((side) => [
          plug(`${side} lead: near`, "mixer", `main ${side}`),
          plug(`${side} lead: far`, sender, `in ${side}`),
        ]),
        ...numbered(listeners, (seat) => plug(`${pack(seat)}: link`, sender, `link ${seat}`)),
      ],
    },
    sets(listeners, worn, size, (seat) => [pack(seat), "phones"]),
  );
}
