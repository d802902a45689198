import type { Fault, Part } from "./part.ts";

/** How often a contact that fails makes and breaks, beside one that stays open. Common practice, no source. */
const share = 0.15;

/** Every open contact has a twin that comes and goes: there at each hearing with even odds. */
export const withTwins = (part: Part): Part => ({
  ...part,
  faults: [...part.faults, ...part.faults.filter(isContact).map(twin)],
});

const isContact = ({ name, at, seen }: Fault): boolean =>
  / (open|loose)$/.test(name) && at !== "settings" && !seen;

const twin = (fault: Fault): Fault => ({
  ...fault,
  weight: fault.weight * share,
  comesAndGoes: true,
});
