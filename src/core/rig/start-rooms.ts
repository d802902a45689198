import { outputName } from "#core/parts/amplifier.ts";
import type { Piece } from "./stand-in-pieces.ts";
import { numbered, part, together } from "./stand-in-pieces.ts";
import { type Drawing, joined, type Make, twoLeads, worn } from "./start-pieces.ts";

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
      plugged: [joined(lead, "near", source, "phones"), joined(lead, "far", amplifier, "in")],
    },
    worn(drawing, (seat) => [amplifier, outputName(seat - 1)]),
  );
};

/** A laptop on two channels of a mixer. */
function atTheMixer({ call }: Drawing): Piece {
  const [laptop, lead, mixer] = [call("laptop"), call("laptop lead"), call("mixer")];
  return {
    parts: [
      part(laptop, "laptop"),
      part(lead, "insert Y", { stemSize: "3.5 mm", metres: 3 }),
      part(mixer, "mixer", { balancing: "impedance-balanced" }),
    ],
    plugged: [
      joined(lead, "stem", laptop, "phones"),
      joined(lead, "left", mixer, "1"),
      joined(lead, "right", mixer, "2"),
    ],
  };
}

/** The monitor pair on one Y lead into an amplifier; whoever sits last, at the drums, has in-ears on an adapter. */
export const rehearsalRoom: Make = (drawing) => {
  const { call, seats } = drawing;
  const [mixer, lead, amplifier] = [call("mixer"), call("feed lead"), call("amplifier")];
  const [adapter, drums] = [call("adapter"), call("in-ears")];
  return together(
    atTheMixer(drawing),
    {
      parts: [
        part(lead, "insert Y", { metres: 3 }),
        part(amplifier, "headphone amplifier", { outputs: seats }),
      ],
      plugged: [
        joined(lead, "left", mixer, "monitor left"),
        joined(lead, "right", mixer, "monitor right"),
        joined(lead, "stem", amplifier, "in"),
      ],
    },
    worn({ call, seats: seats - 1 }, (seat) => [amplifier, outputName(seat - 1)]),
    {
      parts: [part(adapter, "size adapter"), part(drums, "in-ears")],
      plugged: [
        joined(adapter, "plug", amplifier, outputName(seats - 1)),
        joined(drums, "plug", adapter, "socket"),
      ],
    },
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
      plugged: others.map((id, index) => joined(id, "plug", amplifier, outputName(index))),
    },
    worn(drawing, (seat) =>
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
        joined(lead, "near", laptop, "phones"),
        joined(lead, "far", amplifier, "in"),
        ...tables.flatMap((table) => [
          joined(table.lead, "near", amplifier, table.output),
          joined(table.lead, "far", table.amplifier, "in"),
        ]),
      ],
    },
    worn(drawing, (seat) => [
      tables[Math.floor((seat - 1) / atTable)]?.amplifier ?? laptop,
      outputName((seat - 1) % atTable),
    ]),
  );
};
