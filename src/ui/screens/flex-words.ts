import type { FlexPlace } from "#core/measurement/flex-marks.ts";
import type {
  FlexChange,
  FlexEvent,
  FlexFault,
  FlexLimit,
  FlexRefusal,
} from "#core/measurement/flex-names.ts";
import type { FlexState } from "#core/measurement/flex-watch.ts";
import { counted } from "#core/report/phrases.ts";
import { decibels, lasting, moment } from "./numbers.ts";

interface FaultWords {
  /** What is so for a time, and where in the lead that sits. */
  readonly gone: string;
  readonly down: string;
  readonly at: string;
}

const faults: Readonly<Record<FlexFault, FaultWords>> = {
  tip: { gone: "left gone", down: "left down", at: "at the tip's wire" },
  ring: { gone: "right gone", down: "right down", at: "at the ring's wire" },
  "tip and ring": { gone: "both gone", down: "both down", at: "at the tip's and the ring's wire" },
  sleeve: {
    gone: "return gone, only the difference left",
    down: "return weak, the middle down",
    at: "at the sleeve's wire",
  },
  "tip to ring": {
    gone: "left and right touched",
    down: "left and right touched, their difference down",
    at: "tip to ring",
  },
  mixed: {
    gone: "the other side came over",
    down: "the other side came over",
    at: "tip to ring, or the sleeve",
  },
};

/** From here on a side counts as gone, and is not said to be down by so much. */
const gone = 20;

/** An event as one says it: 'left gone for 12 ms, at the tip's wire'. */
export function eventWords(event: FlexEvent): string {
  const words = faults[event.fault];
  const what =
    event.depth >= gone || event.fault === "mixed"
      ? words.gone
      : `${words.down} ${decibels(event.depth)}`;
  const short = event.cause === "short" && event.fault !== "tip to ring" ? ", shorted" : "";
  const time =
    event.breaks > 1
      ? `, ${event.breaks} times in ${lasting(event.duration)}`
      : ` for ${lasting(event.duration)}${event.going ? " so far" : ""}`;
  return `${what}${time}${short}, ${words.at}`;
}

/** Where along the lead an event was, by the marks beside it. */
export function placeWords({ along, before, after }: FlexPlace): string {
  if (along !== undefined) return alongWords(along);
  if (before !== undefined)
    return `${lasting(before.seconds)} after the hand passed plug ${before.mark.plug}`;
  if (after !== undefined)
    return `${lasting(after.seconds)} before the hand passed plug ${after.mark.plug}`;
  return "where is not known: no plug was marked";
}

function alongWords(along: number): string {
  if (along < 0.1) return "at plug 1";
  if (along > 0.9) return "at plug 2";
  return `about ${Math.round(10 * along)} tenths of the way from plug 1 to plug 2`;
}

/** What this hook-up cannot show, in words. */
export const limitWords: Readonly<Record<FlexLimit, string>> = {
  sleeve:
    "The sleeve: not tested. Output and input have one ground already, so a lost sleeve shows nowhere. A load box lets it be seen; so do ears and a meter.",
  "left only": "The right side: nothing of it comes back, so its wire was not watched.",
  "right only": "The left side: nothing of it comes back, so its wire was not watched.",
  "one input":
    "Both sides come in by one input: a lost side is seen, a lost sleeve or two wires that touch are not.",
};

/** Why it cannot watch, and what to do. */
export const refusalWords: Readonly<Record<FlexRefusal, string>> = {
  "no signal":
    "Nothing of the signal comes back. See that the lead is in at both ends and the input is the right one; then raise it, a step at a time.",
  clipped: "The input is cut off at the top. Turn its gain down, or go softer.",
  "too noisy to see 2 ms":
    "It is too quiet against the noise to see 2 ms. Turn the input's gain up, or go louder.",
  "sides mixed":
    "Left and right come back mixed, as by a mono switch or a lead that joins them. Take that out first, then start again.",
};

/** How many breaks, for a heading. */
export function countWords({ events, earlier }: FlexState): string {
  const count = events.length + (earlier?.count ?? 0);
  return count === 0 ? "nothing so far" : counted(count, "event", "events");
}

/** Longest and deepest first. */
export const worstFirst = (events: readonly FlexEvent[]): readonly FlexEvent[] =>
  [...events].sort((a, b) => b.broken * b.depth - a.broken * a.depth);

/** What the watch has to say of itself beside its events: sentences. */
export function besideWords(state: FlexState): readonly string[] {
  const { changes, disturbed, blind, earlier } = state;
  return [
    ...(earlier === undefined
      ? []
      : [
          `${counted(earlier.count, "earlier event", "earlier events")} until ${moment(earlier.to)}, ${lasting(earlier.broken)} broken in all, no longer told one by one.`,
        ]),
    ...changes.map(changeWords),
    ...(disturbed.count === 0
      ? []
      : [
          `${counted(disturbed.count, "disturbance", "disturbances")} that no fault of a lead explains, ${lasting(disturbed.seconds)} in all: noise from elsewhere, or a hand on the metal.`,
        ]),
    ...Object.entries(blind).map(
      ([why, seconds]) => `For ${lasting(seconds)} nothing could be seen: ${why}.`,
    ),
  ];
}

const changeWords = ({ at, of, level }: FlexChange): string =>
  of === "crosstalk"
    ? `At ${moment(at)} what comes over to the other side became ${decibels(level)}.`
    : `At ${moment(at)} ${of} had gone slowly to ${decibels(level)} of how it began.`;

/** What is drawn between the lanes. */
export const overNote =
  "Between the lanes: what comes over from one side to the other; hanging down, it is upside down.";
