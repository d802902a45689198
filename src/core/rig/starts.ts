import { type Drawing, overLinks, part, plug, seated, sets, together, twoLeads } from "./pieces.ts";
import type { Rig } from "./rig.ts";
import { classroom, type Make, podcastTable, rehearsalRoom, smallStudio } from "./start-rooms.ts";
import { type StartKey, type StartWords, startKeys } from "./start-words.ts";

/** A rig to begin with: what is usual in such a place (common practice, no source), down to the leads and how each box is set. */
export interface Start {
  readonly key: StartKey;
  readonly make: (words: StartWords) => Rig;
}

/** An interface on two channels of a console, its stereo send by two leads into a transmitter, and a pack on everybody's belt. */
const stageInEars: Make = (drawing) => {
  const { call, seats } = drawing;
  const [source, console, transmitter] = [call("interface"), call("console"), call("transmitter")];
  const sides = ["left", "right"] as const;
  return together(
    {
      parts: [
        part(source, "sound interface"),
        ...sides.map((side) => part(call(`${side} input lead`), "XLR to TRS lead", { metres: 5 })),
        part(console, "console"),
      ],
      plugged: sides.flatMap((side, index) => [
        plug(call(`${side} input lead`), "far", source, `line ${side}`),
        plug(call(`${side} input lead`), "near", console, `${index + 1}`),
      ]),
    },
    twoLeads(drawing, "XLR lead", [console, "mix"], transmitter),
    overLinks(drawing, {
      sender: part(transmitter, "transmitter", { links: seats, input: "XLR pair" }),
      receiver: (seat) => part(call("belt pack", seat), "belt pack"),
      worn: "in-ears",
      size: "3.5 mm",
    }),
  );
};

/** One set of headphones straight into a laptop. */
const onePerson: Make = ({ call }) => {
  const laptop = call("laptop");
  const alone: Drawing = { call: (name) => call(name), seats: 1 };
  return together(
    { parts: [part(laptop, "laptop")], plugged: [] },
    sets(alone, "headphones", "3.5 mm", () => [laptop, "phones"]),
  );
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

function made(key: StartKey, { parts, starts: named }: StartWords): Rig {
  const { name, seats } = named[key];
  const call: Drawing["call"] = (word, number) =>
    number === undefined ? parts[word] : `${parts[word]} ${number}`;
  const piece = makes[key]({ call, seats: seats.length });
  return seated(
    name,
    piece,
    seats.map((seat, index) => `${index + 1} ${seat}`),
  );
}
