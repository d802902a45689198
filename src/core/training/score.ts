/** One question and what was said to it: all that is kept of a round. Ids are those of soundings. */
export interface Answered {
  /** What was played. */
  readonly asked: string;
  /** What was taken for it. */
  readonly given: string;
}

/** How one sounding fared. */
interface Tally {
  /** How often it was played. */
  readonly asked: number;
  /** How often it was named. */
  readonly right: number;
  /** How often each other one was named in its stead. */
  readonly takenFor: Readonly<Record<string, number>>;
}

/** By what was played; what was never played has no tally. */
export type Score = Readonly<Record<string, Tally>>;

const none: Tally = { asked: 0, right: 0, takenFor: {} };

/** The score is never kept: it is what the answers add up to. */
export function scoreOf(answered: readonly Answered[]): Score {
  const tallies = new Map<string, Tally>();
  for (const answer of answered)
    tallies.set(answer.asked, counted(tallies.get(answer.asked) ?? none, answer));
  return Object.fromEntries(tallies);
}

function counted({ asked, right, takenFor }: Tally, { asked: id, given }: Answered): Tally {
  if (given === id) return { asked: asked + 1, right: right + 1, takenFor };
  return {
    asked: asked + 1,
    right,
    takenFor: { ...takenFor, [given]: (takenFor[given] ?? 0) + 1 },
  };
}

/** Answers that count towards how weak somebody is at a sounding now. */
const lately = 3;

/** The share of wrong ones among the last few answers about a sounding, zero to one; undefined before the first. */
export function weakness(answered: readonly Answered[], id: string): number | undefined {
  const last = answered.filter(({ asked }) => asked === id).slice(-lately);
  if (last.length === 0) return undefined;
  return last.filter(({ given }) => given !== id).length / last.length;
}
