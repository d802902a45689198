import type { MoveWords } from "./move-words.ts";

const ends = ["all the way left", "to the middle", "all the way right"];

/** Every move, as somebody is told to make it and as the log says it was made. `name` gives the words for a part, a place or a seat. */
export const moves: MoveWords = {
  "set right": {
    tell: ({ place }, name) => `Set right what a look shows at ${name(place)}`,
    told: ({ place }, name) => `set right: ${name(place)}`,
  },
  replaced: {
    tell: ({ place }, name) => `Put a good one in the place of ${name(place)}`,
    told: ({ place }, name) => `seen to: ${name(place)}`,
  },
  "plugged anew": {
    tell: ({ part }, name) => `Pull the plug of ${name(part)} out and push it home, five times`,
    told: ({ part }, name) => `plugged anew: ${name(part)}`,
  },
  exchanged: {
    tell: ({ parts: [a, b] }, name) => `Exchange ${name(a)} and ${name(b)}`,
    told: ({ parts: [a, b] }, name) => `exchanged: ${name(a)} and ${name(b)}`,
  },
  "known good in": {
    tell: ({ part }, name) => `Plug in one that is known to be good instead of ${name(part)}`,
    told: ({ part }, name) => `a good one instead of ${name(part)}`,
  },
  "put back": {
    tell: ({ part }, name) => `Put ${name(part)} back as it was: does it return?`,
    told: ({ part }, name) => `put back: ${name(part)}`,
  },
  moved: {
    tell: ({ part, into, socket }, name) =>
      `Move the plug of ${name(part)} to ${socket} of ${name(into)}`,
    told: ({ part, socket }, name) => `moved: ${name(part)}, to ${socket}`,
  },
  "turned round": {
    tell: () => "Turn the headphones round on the head: each cup on the other ear",
    told: ({ position }, name) => `turned round: the headphones of ${name(position)}`,
  },
  set: {
    tell: ({ part, control, value }, name) =>
      `Turn ${control} of ${name(part)} ${ends[Math.sign(value) + 1]}`,
    told: ({ part, control }, name) => `turned: ${control} of ${name(part)}`,
  },
};
