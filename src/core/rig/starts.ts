import type { Rig } from "./rig.ts";
import { numbered, part, together } from "./stand-in-pieces.ts";
import { type Drawing, joined, type Make, twoLeads } from "./start-pieces.ts";
import { classroom, podcastTable, rehearsalRoom, smallStudio } from "./start-rooms.ts";
import { type StartKey, type StartWords, startKeys } from "./start-words.ts";

/** A rig to begin with: what is usual in such a place (common practice, no source), down to the leads and how each box is set. */
export interface Start {
  readonly key: StartKey;
  readonly make: (words: StartWords) => Rig;
}

/** An interface on two channels of a console, its stereo send by two leads into a transmitter, and a pack on everybody's belt. */
const stageInEars: Make = (drawing) => {
  const { call, seats } = drawing;
  const [source, console] = [call("interface"), call("console")];
  const transmitter = call("transmitter");
  const sides = ["left", "right"] as const;
  const packs = numbered(seats, (seat) => call("belt pack", seat));
  const ears = numbered(seats, (seat) => call("in-ears", seat));
  return together(
    {
      parts: [
        part(source, "sound interface"),
        ...sides.map((side) => part(call(`${side} input lead`), "XLR to TRS lead", { metres: 5 })),
        part(console, "console"),
        part(transmitter, "transmitter", { links: seats, input: "XLR pair" }),
      ],
      plugged: sides.flatMap((side, index) => [
        joined(call(`${side} input lead`), "far", source, `line ${side}`),
        joined(call(`${side} input lead`), "near", console, `${index + 1}`),
      ]),
    },
    twoLeads(drawing, "XLR lead", [console, "mix"], transmitter),
    {
      parts: [
        ...packs.map((id) => part(id, "belt pack")),
        ...ears.map((id) => part(id, "in-ears")),
      ],
      plugged: [
        ...packs.map((id, index) => joined(id, "link", transmitter, `link ${index + 1}`)),
        ...ears.map((id, index) => joined(id, "plug", packs[index] ?? source, "phones")),
      ],
    },
  );
};

/** One set of headphones straight into a laptop. */
const onePerson: Make = ({ call }) => {
  const [laptop, headphones] = [call("laptop"), call("headphones")];
  return {
    parts: [part(laptop, "laptop"), part(headphones, "headphones", { size: "3.5 mm" })],
    plugged: [joined(headphones, "plug", laptop, "phones")],
  };
};

const makes: Readonly<Record<StartKey, Make>> = {
  "podcast table": podcastTable,
  "rehearsal room": rehearsalRoom,
  "small studio": smallStudio,
  classroom,
  "stage in-ears": stageInEars,
  "one person": onePerson,
  "draw your own": onePerson,
};

/** Every start, to be made with the words of a language. One function and one line above add one. */
export const starts: readonly Start[] = startKeys.map((key) => ({
  key,
  make: (words) => made(key, words),
}));

/** The parts that are worn, in the order they are drawn, are the seats' own. */
function made(key: StartKey, { parts, starts: named }: StartWords): Rig {
  const { name, seats } = named[key];
  const call: Drawing["call"] = (word, number) =>
    number === undefined ? parts[word] : `${parts[word]} ${number}`;
  const piece = makes[key]({ call, seats: seats.length });
  const worns = piece.parts.filter(({ kind }) => kind === "headphones" || kind === "in-ears");
  return {
    name,
    ...piece,
    positions: seats.map((seat, index) => ({
      id: `position ${index + 1}`,
      name: `${index + 1} ${seat}`,
      wears: worns[index]?.id ?? "",
    })),
  };
}
