import type { ProvingWords } from "./proving-words.ts";

const names: Readonly<Record<string, string>> = {
  near: "the near plug",
  far: "the far plug",
  stem: "the single plug",
  left: "the left plug",
  right: "the right plug",
  plug: "the plug",
  socket: "the socket",
  "near left": "the near left plug",
  "near right": "the near right plug",
  "far left": "the far left plug",
  "far right": "the far right plug",
};

/** Cautions: handbook, section 10. */
export const proving: ProvingWords = {
  methods: {
    return: "back into line inputs",
    "load box": "into a load box",
    ear: "by ear",
    meter: "by a multimeter",
  },
  end: (name) => names[name] ?? name,
  contact: (contact, end) => `${contact} of ${end}`,
  wires: {
    "as intended": ({ from, to, ohms }) => `${from} to ${to}: as it should be, ${ohms}`,
    resistive: ({ from, to, ohms }) => `${from} to ${to}: joined by ${ohms}`,
    "comes and goes": ({ from, to }) => `${from} to ${to}: comes and goes`,
    open: ({ from, to }) => `${from} to ${to}: open`,
    exchanged: ({ from, to, instead }) => `${to} goes to ${instead}, and should go to ${from}`,
    joined: ({ from, to }) => `${from} and ${to} are joined, and should not be`,
  },
  solder: {
    resistive: ({ from, to }) =>
      `clean both plugs; if it stays, solder the ${from} and the ${to} anew`,
    "comes and goes": ({ from, to }) =>
      `find the end where bending moves it, and solder the ${from} or the ${to} anew`,
    open: ({ from, to }) =>
      `solder the ${from} or the ${to} anew: open the plug where the cable was bent most first`,
    exchanged: ({ from, to, instead }) =>
      `unsolder the wire at the ${to}, which comes from the ${instead}, and put there the one that comes from the ${from}`,
    joined: ({ from, to }) =>
      `look in both plugs for a strand or a drop of solder between the ${from} and the ${to}`,
  },
  solderCare: [
    "both ends unplugged, phantom power off",
    "solder in fresh air and with eye protection",
    "never at soundcheck: replace the lead, and solder it later",
    "prove it again afterwards, volume down first",
  ],
  notTested: (what) => `${what}: not tested`,
  capacitance: "the capacitance of the cable",
  soundLead: "Nothing is wrong with it that this way of proving can find",
};
