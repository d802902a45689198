import type { Probability } from "#core/units/units.ts";
import type { Question } from "./check.ts";
import { comingAndGoing, type Shares, said, unnoticed } from "./complaint-shares.ts";
import { complaints, inOrder, mirroredComplaint } from "./complaints.ts";
import { impressions, impressionsOf } from "./impressions.ts";

/** How often anything else is said than goes with what is heard: no word rules anything out. Common practice, no source. */
const anyhow: Probability = 0.03;

/** What is said, and how often nothing is; one probability for each of `complaints`, which sum to one. */
const spoken = (words: Shares, kept: Probability): Float64Array =>
  inOrder(words).map((share, at) => {
    const meant = (1 - kept) * share + (complaints[at] === "no complaint" ? kept : 0);
    return (1 - anyhow) * meant + anyhow / complaints.length;
  });

const shares = impressions.map((impression) => spoken(said[impression], unnoticed[impression]));

/** What is said of a way that comes and goes, one probability for each of `complaints`. */
const unsteady: Float64Array = spoken(comingAndGoing, 0.1);

/**
 * What somebody complains of, if at all, who hears ordinary programme: music with a voice in the middle, some of it on the
 * left and some on the right. Worked out from what the way does, never from what is broken.
 */
export const complaint: Question = {
  name: "complaint",
  answers: complaints,
  unsteady,
  predict: (behaviour, healthy) => {
    const heard = impressionsOf(behaviour, healthy);
    if (!behaviour.mirrors) return words(heard);
    return turnRound(words(mistaken(heard)));
  },
};

const words = (heard: Float64Array): Float64Array =>
  Float64Array.from(complaints, (_, at) =>
    shares.reduce((sum, row, which) => sum + (heard[which] ?? 0) * (row[at] ?? 0), 0),
  );

/** How often somebody who takes left for right says that the sides are swapped, since it is not as they see it. Common practice, no source. */
const seesItSwapped: Probability = 0.15;

const [straightAt, crossedAt] = [impressions.indexOf("straight"), impressions.indexOf("crossed")];

function mistaken(heard: Float64Array): Float64Array {
  const [straight = 0, crossed = 0] = [heard[straightAt], heard[crossedAt]];
  const moved = seesItSwapped * (straight - crossed);
  return heard.map((p, at) => {
    if (at === straightAt) return p - moved;
    return at === crossedAt ? p + moved : p;
  });
}

const turned = complaints.map((one) => complaints.indexOf(mirroredComplaint(one)));

const turnRound = (answers: Float64Array): Float64Array =>
  answers.map((_, at) => answers[turned[at] ?? at] ?? 0);
