import type { StartWords } from "#core/rig/start-words.ts";

/** What everything in the ready-made rigs is called. */
export const starts: StartWords = {
  parts: {
    laptop: "laptop",
    "laptop lead": "laptop lead",
    interface: "interface",
    mixer: "mixer",
    console: "console",
    "left input lead": "left input lead",
    "right input lead": "right input lead",
    "feed lead": "feed lead",
    "left lead": "left lead",
    "right lead": "right lead",
    amplifier: "amplifier",
    "table amplifier": "table amplifier",
    transmitter: "transmitter",
    "belt pack": "belt pack",
    extension: "extension",
    adapter: "adapter",
    headphones: "headphones",
    "in-ears": "in-ears",
  },
  starts: {
    "podcast table": {
      name: "Podcast table",
      seats: ["host", "co-host", "guest", "producer"],
    },
    "rehearsal room": {
      name: "Rehearsal room",
      seats: ["voice", "guitar", "bass", "keys", "drums"],
    },
    "small studio": { name: "Small studio", seats: ["desk", "voice", "fiddle"] },
    classroom: {
      name: "Classroom",
      seats: [
        "table A",
        "table A",
        "table A",
        "table B",
        "table B",
        "table B",
        "table C",
        "table C",
        "table C",
        "table D",
        "table D",
        "table D",
      ],
    },
    "stage in-ears": { name: "Stage in-ears", seats: ["voice", "guitar", "bass", "drums"] },
    "one person": { name: "One person", seats: ["you"] },
    "draw your own": { name: "A rig of your own", seats: ["you"] },
  },
};
