import { outputName } from "#core/parts/amplifier.ts";
import {
  type Drawing,
  mixerDesk,
  numbered,
  type Piece,
  part,
  plug,
  sets,
  together,
  twoLeads,
} from "./pieces.ts";

/** A start drawn, but for who sits where. Its rooms, leads, lengths and settings: common practice, no source. */
export type Make = (drawing: Drawing) => Piece;

/** A sound interface, and from its headphone socket one lead into an amplifier with a set for everybody. */
export const podcastTable: Make = (drawing) => {
  const { call, seats } = drawing;
  const [source, lead, amplifier] = [call("interface"), call("feed lead"), call("amplifier")];
  return together(
    {
      parts: [
        part(source, "sound interface"),
        part(lead, "TRS lead", { metres: 2 }),
        part(amplifier, "headphone amplifier", { outputs: seats }),
      ],
      plugged: [plug(lead, "near", source, "phones"), plug(lead, "far", amplifier, "in")],
    },
    sets(drawing, "headphones", "6.35 mm", (seat) => [amplifier, outputName(seat - 1)]),
  );
};

/** The monitor pair on one Y lead into an amplifier; whoever sits last, at the drums, has in-ears on an adapter. */
export const rehearsalRoom: Make = (drawing) => {
  const { call, seats } = drawing;
  const [mixer, lead, amplifier] = [call("mixer"), call("feed lead"), call("amplifier")];
  const last: Drawing = { call: (name) => call(name), seats: 1 };
  return together(
    mixerDesk({ source: call("laptop"), lead: call("laptop lead"), mixer }),
    {
      parts: [part(lead, "insert Y"), part(amplifier, "headphone amplifier", { outputs: seats })],
      plugged: [
        plug(lead, "left", mixer, "monitor left"),
        plug(lead, "right", mixer, "monitor right"),
        plug(lead, "stem", amplifier, "in"),
      ],
    },
    sets({ call, seats: seats - 1 }, "headphones", "6.35 mm", (seat) => [
      amplifier,
      outputName(seat - 1),
    ]),
    sets(last, "in-ears", "6.35 mm", () => [amplifier, outputName(seats - 1)]),
  );
};

/** Whoever records at the interface's own socket, the rest at an amplifier on its line outputs, with extensions into the other room. */
export const smallStudio: Make = (drawing) => {
  const { call, seats } = drawing;
  const [source, amplifier] = [call("interface"), call("amplifier")];
  const others = numbered(seats - 1, (seat) => call("extension", seat));
  return together(
    {
      parts: [
        part(source, "sound interface", { balancing: "actively balanced" }),
        part(amplifier, "headphone amplifier", {
          outputs: 4,
          input: "balanced left and right jacks",
          supply: "mains-earthed",
        }),
      ],
      plugged: [],
    },
    twoLeads(drawing, "TRS lead", [source, "line"], amplifier),
    {
      parts: others.map((id) => part(id, "TRS extension lead", { metres: 6 })),
      plugged: others.map((id, index) => plug(id, "plug", amplifier, outputName(index))),
    },
    sets(drawing, "headphones", "6.35 mm", (seat) =>
      seat === 1 ? [source, "phones"] : [others[seat - 2] ?? source, "socket"],
    ),
  );
};

const atTable = 3;

/** A laptop into an amplifier, and from each of its outputs a long lead to a table of three with an amplifier of its own. */
export const classroom: Make = (drawing) => {
  const { call, seats } = drawing;
  const [laptop, lead, amplifier] = [call("laptop"), call("laptop lead"), call("amplifier")];
  const tables = numbered(Math.ceil(seats / atTable), (table) => ({
    lead: call("feed lead", table),
    amplifier: call("table amplifier", table),
    output: outputName(table - 1),
  }));
  return together(
    {
      parts: [
        part(laptop, "laptop"),
        part(lead, "TRS lead", { nearSize: "3.5 mm", metres: 2 }),
        part(amplifier, "headphone amplifier", { outputs: tables.length }),
        ...tables.flatMap((table) => [
          part(table.lead, "TRS lead", { metres: 6 }),
          part(table.amplifier, "headphone amplifier", { outputs: atTable }),
        ]),
      ],
      plugged: [
        plug(lead, "near", laptop, "phones"),
        plug(lead, "far", amplifier, "in"),
        ...tables.flatMap((table) => [
          plug(table.lead, "near", amplifier, table.output),
          plug(table.lead, "far", table.amplifier, "in"),
        ]),
      ],
    },
    sets(drawing, "headphones", "6.35 mm", (seat) => [
      tables[Math.floor((seat - 1) / atTable)]?.amplifier ?? laptop,
      outputName((seat - 1) % atTable),
    ]),
  );
};
