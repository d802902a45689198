import type { StartWords } from "#core/rig/start-words.ts";

export const starts: StartWords = {
  parts: {
    laptop: "Laptop",
    "laptop lead": "Laptopkabel",
    interface: "Interface",
    mixer: "Mischpult",
    console: "Pult",
    "left input lead": "Eingangskabel links",
    "right input lead": "Eingangskabel rechts",
    "feed lead": "Zuleitung",
    "left lead": "Kabel links",
    "right lead": "Kabel rechts",
    amplifier: "Verstärker",
    "table amplifier": "Tischverstärker",
    transmitter: "Sender",
    "belt pack": "Taschenempfänger",
    extension: "Verlängerung",
    adapter: "Adapter",
    headphones: "Kopfhörer",
    "in-ears": "In-Ears",
  },
  starts: {
    "podcast table": {
      name: "Podcast-Tisch",
      seats: ["Moderation", "Co-Moderation", "Gast", "Regie"],
    },
    "rehearsal room": {
      name: "Proberaum",
      seats: ["Gesang", "Gitarre", "Bass", "Tasten", "Schlagzeug"],
    },
    "small studio": { name: "Kleines Studio", seats: ["Pult", "Gesang", "Geige"] },
    classroom: {
      name: "Klassenzimmer",
      seats: [
        "Tisch A",
        "Tisch A",
        "Tisch A",
        "Tisch B",
        "Tisch B",
        "Tisch B",
        "Tisch C",
        "Tisch C",
        "Tisch C",
        "Tisch D",
        "Tisch D",
        "Tisch D",
      ],
    },
    "stage in-ears": {
      name: "Bühne mit In-Ears",
      seats: ["Gesang", "Gitarre", "Bass", "Schlagzeug"],
    },
    "one person": { name: "Eine Person", seats: ["Sie"] },
    "draw your own": { name: "Eigener Aufbau", seats: ["Sie"] },
  },
};
