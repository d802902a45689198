import type { Probability } from "#core/units/units.ts";
import { type Complaint, complaints, mirroredComplaint } from "./complaints.ts";
import type { Impression } from "./impressions.ts";

/** Shares of complaints that sum to one; what is left out has none. */
export type Shares = Partial<Readonly<Record<Complaint, Probability>>>;

/** What is said of a side that is alone; of the other one, its mirror. */
const leftAlone: Shares = {
  "only the left ear works": 0.76,
  "right side quiet": 0.09,
  "a part is missing": 0.05,
  "crackle, or it comes and goes": 0.03,
  "nothing at all": 0.02,
  "something else": 0.05,
};

const leftWeaker: Shares = {
  "left side quiet": 0.62,
  "only the right ear works": 0.13,
  "quiet on both sides": 0.05,
  "a part is missing": 0.05,
  "hollow or thin": 0.04,
  "something else": 0.11,
};

const mirrored = (shares: Shares): Shares =>
  Object.fromEntries(
    complaints.map((complaint) => [mirroredComplaint(complaint), shares[complaint] ?? 0]),
  );

/**
 * What people say of what strikes them, in shares of one: they mix the words, and 'mono' means anything that is not the usual (handbook,
 * section 6). Shares: common practice, no source. Sides exchanged are reported as 'strange' about as often as 'swapped' (field case 32).
 * Hiss and hum are in no behaviour yet, so they have but small shares; with a lost return, hum comes along more often (handbook, section 5).
 */
export const said: Readonly<Record<Impression, Shares>> = {
  silent: { "nothing at all": 0.88, "quiet on both sides": 0.06, "something else": 0.06 },
  "left ear alone": leftAlone,
  "right ear alone": mirrored(leftAlone),
  "middle gone": {
    "no voice": 0.48,
    "hollow or thin": 0.22,
    "a part is missing": 0.1,
    "quiet on both sides": 0.06,
    "the same in both ears": 0.04,
    hum: 0.06,
    "something else": 0.04,
  },
  "middle wide": {
    "hollow or thin": 0.5,
    "no voice": 0.13,
    "a part is missing": 0.06,
    "the same in both ears": 0.06,
    "quiet on both sides": 0.03,
    hum: 0.04,
    "something else": 0.18,
  },
  faint: {
    "quiet on both sides": 0.7,
    "hollow or thin": 0.11,
    "nothing at all": 0.07,
    hiss: 0.04,
    "something else": 0.08,
  },
  crossed: { "sides swapped": 0.5, "the same in both ears": 0.05, "something else": 0.45 },
  "left weaker": leftWeaker,
  "right weaker": mirrored(leftWeaker),
  "one side's programme gone": {
    "a part is missing": 0.38,
    "the same in both ears": 0.34,
    "hollow or thin": 0.06,
    "no voice": 0.05,
    "something else": 0.17,
  },
  alike: {
    "the same in both ears": 0.58,
    "a part is missing": 0.08,
    "hollow or thin": 0.1,
    "something else": 0.24,
  },
  straight: {
    "something else": 0.55,
    "quiet on both sides": 0.1,
    hiss: 0.1,
    hum: 0.1,
    "crackle, or it comes and goes": 0.05,
    "hollow or thin": 0.05,
    "the same in both ears": 0.05,
  },
};

/**
 * How often nobody says a word: that both ears work feels correct to people, a silent ear does not (handbook, section 6); who hears nothing
 * wrong seldom complains. Shares: common practice, no source.
 */
export const unnoticed: Readonly<Record<Impression, Probability>> = {
  silent: 0.02,
  "left ear alone": 0.05,
  "right ear alone": 0.05,
  "middle gone": 0.15,
  "middle wide": 0.35,
  faint: 0.2,
  crossed: 0.5,
  "left weaker": 0.3,
  "right weaker": 0.3,
  "one side's programme gone": 0.3,
  alike: 0.4,
  straight: 0.94,
};

/** Of a way that comes and goes: that it does, and now and then what it does while it is gone. Common practice, no source. */
export const comingAndGoing: Shares = {
  "crackle, or it comes and goes": 0.6,
  "only the left ear works": 0.08,
  "only the right ear works": 0.08,
  "hollow or thin": 0.05,
  "no voice": 0.04,
  "nothing at all": 0.04,
  hum: 0.02,
  "something else": 0.09,
};
