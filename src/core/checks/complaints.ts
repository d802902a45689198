/** What people say is wrong, a closed list, and last that nothing is. Which ear was not said is a set of two of them. */
export const complaints = [
  "only the left ear works",
  "only the right ear works",
  "left side quiet",
  "right side quiet",
  "quiet on both sides",
  "nothing at all",
  "no voice",
  "hollow or thin",
  "the same in both ears",
  "a part is missing",
  "sides swapped",
  "hiss",
  "hum",
  "crackle, or it comes and goes",
  "something else",
  "no complaint",
] as const;
export type Complaint = (typeof complaints)[number];

const others: Partial<Readonly<Record<Complaint, Complaint>>> = {
  "only the left ear works": "only the right ear works",
  "only the right ear works": "only the left ear works",
  "left side quiet": "right side quiet",
  "right side quiet": "left side quiet",
};

/** What somebody says who takes left for right. */
export const mirroredComplaint = (complaint: Complaint): Complaint =>
  others[complaint] ?? complaint;

/** Some shares of complaints as one number for each of `complaints`, in their order; what is left out has none. */
export const inOrder = (shares: Partial<Readonly<Record<Complaint, number>>>): Float64Array =>
  Float64Array.from(complaints, (complaint) => shares[complaint] ?? 0);
