import type { Words } from "#ui/words/use-words.ts";

const notKnown = "weiß nicht";

export const complaint: Words["complaint"] = {
  quoted: (said) => `„${said.join(", oder ")}“`,
  questions: {
    said: "Was wird gesagt?",
    feed: "Woran hängt der Kopfhörer?",
    worn: "Was wird getragen?",
    listeners: "Wie viele hören dieses Signal?",
    seat: "Wer sagt das?",
    others: "Hört es sonst noch jemand so?",
  },
  nearest: "Auf das zeigen, was am nächsten kommt; kein Wort entscheidet für sich allein.",
  ownWords: "In eigenen Worten",
  lastRig: "der Aufbau der letzten Sitzung",
  feeds: {
    laptop: { name: "ein Rechner", note: "direkt in dessen Buchse" },
    phone: { name: "ein Telefon", note: "direkt in dessen Buchse" },
    "amplifier after a mixer": {
      name: "ein Kopfhörer\u00ADverstärker",
      note: "mit einem Pult davor",
    },
    "belt pack": { name: "ein Taschen\u00ADempfänger", note: "über Funk" },
    "personal mixer": { name: "ein Personal-Mixer für jeden", note: "einer an jedem Platz" },
    "don't know": { name: notKnown, note: "das Übliche genügt vorerst" },
  },
  worn: { headphones: "Kopfhörer", "in-ears": "In-Ears" },
  notKnown,
  justOne: "nur einer",
  others: { none: "nur dieser Platz", all: "alle", "don't know": "noch niemand gefragt" },
  tells: "Das trennt, was alle teilen, von dem, was nur dieser Platz hat.",
};
