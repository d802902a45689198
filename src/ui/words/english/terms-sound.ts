import type { Term } from "#ui/words/term-names.ts";

/** Words for boxes, people, and what is heard. */
export const sound = {
  "belt pack": {
    term: "belt pack",
    text: "The small receiver or amplifier at somebody's belt that in-ears are plugged into. It has a volume of its own, often a balance, and a switch for mono.",
  },
  "both sides inverted": {
    term: "both sides inverted",
    text: "Left and right both upside down. Between them nothing changes, so no ear and no check here can tell.",
  },
  crosstalk: {
    term: "crosstalk",
    text: "What of one side arrives in the other, in decibels against what arrives where it should. A return of some ohms makes it, with the sign turned.",
  },
  dBFS: {
    term: "dBFS",
    text: "A level against the largest number a converter has. Here it is the root mean square against a sample of 1, so that the loudest sine is −3 dBFS; the standard counts that sine as 0.",
  },
  dBu: {
    term: "dBu",
    text: "A level against 0.775 volts. A balanced line of a desk is at +4 dBu when it is well in use.",
  },
  decibel: {
    term: "decibel, dB",
    text: "A ratio of levels: 6 dB is twice the voltage, 20 dB ten times, 1 dB about the least one notices.",
  },
  difference: {
    term: "difference",
    text: "Left minus right. What is the same on both, most often the voice, is gone; what is at the sides stays and sounds wide.",
  },
  "ear matrix": {
    term: "ear matrix",
    text: "Four numbers: what each ear gets of each side. A good feed has its own side in each ear and nothing of the other; every fault is another four.",
  },
  feed: {
    term: "feed",
    text: "What somebody is sent to hear, and the way it takes: from the desk to their ears.",
  },
  "headphone amplifier": {
    term: "headphone amplifier",
    text: "A box with one input and several outputs, each with its own volume, strong enough to drive headphones. It also keeps what goes wrong at one output from the others.",
  },
  "in-ears": {
    term: "in-ears",
    text: "Earphones that seal the ear canal. Where the seal leaks the bass is gone on that side, and no lead is to blame.",
  },
  "input impedance": {
    term: "input impedance",
    text: "What an input takes from what feeds it, in ohms: 10 kΩ and more for a line, 16 to 600 Ω for headphones.",
  },
  "line level": {
    term: "line level",
    text: "The level between boxes, about a volt. Headphones on a line output are faint, and the output is strained.",
  },
  "mono sum": {
    term: "mono sum",
    text: "Left and right added, the same in both ears. What is upside down on one side is gone from it.",
  },
  "output impedance": {
    term: "output impedance",
    text: "The resistance inside an output. It shares the voltage with the headphones: the higher it is, the more of them on one socket take from each other.",
  },
  pan: {
    term: "pan",
    text: "The knob that sends a channel to the left, the middle or the right. On a mono send it does nothing.",
  },
  phase: {
    term: "phase",
    text: "How late something is, counted in parts of its period. Often said where polarity is meant: that one is upside down at every frequency alike.",
  },
  polarity: {
    term: "polarity",
    text: "Which way up a signal is: a push at the microphone is a push at the ear. Where one side is turned over, the middle has no place and sounds hollow.",
  },
  position: {
    term: "position",
    text: "Where somebody listens, with what is worn there. A round goes from one to the next.",
  },
  round: {
    term: "round",
    text: "The walk from position to position before a show, in which everybody's headphones are heard.",
  },
  send: {
    term: "send, aux",
    text: "An output of a desk with a mix of its own, most often mono. Its pan and its faders are others than those of the main outputs.",
  },
  side: {
    term: "side",
    text: "Left or right. Drawn filled and outlined here, and always with the letter.",
  },
  solo: {
    term: "solo, PFL",
    text: "A button that puts one channel alone into the headphones, often in mono. Left pressed, it takes over the socket that feeds everybody.",
  },
  swapped: {
    term: "swapped",
    text: "Left in the right ear and right in the left: two plugs exchanged, or headphones worn the wrong way round.",
  },
  trunk: {
    term: "trunk",
    text: "What all positions share, from the source to where their ways part. A fault in it is heard by everybody, and is mended first.",
  },
} satisfies Readonly<Record<string, Term>>;
