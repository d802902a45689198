import { counted } from "#core/report/phrases.ts";
import type { FlexSaid } from "#ui/words/flex-said.ts";

/** What is so for a time, and where in the lead that sits. */
const faults = {
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

/** An event as one says it: 'left gone for 12 ms, at the tip's wire'. */
function event({ fault, down, breaks, lasted, going, shorted }: FlexSaid): string {
  const words = faults[fault];
  const what = down === undefined ? words.gone : `${words.down} ${down}`;
  const time =
    breaks > 1 ? `, ${breaks} times in ${lasted}` : ` for ${lasted}${going ? " so far" : ""}`;
  return `${what}${time}${shorted ? ", shorted" : ""}, ${words.at}`;
}

const events = (count: number): string => counted(count, "event", "events");

/** A lead that is watched while it is bent. */
export const flex = {
  title: "Bend a lead and watch",
  before: {
    title: "Put the lead between the output and the input",
    hint: "Then bend it along its length while four tones run through it. Whatever lets go for 2 ms or more is told: when, for how long, and which wire.",
    start: "Start quietly",
    byHand: "I raise it by hand",
  },
  live: {
    refused: "It cannot watch yet",
    still: "Hold it still",
    bend: "Bend it, from plug 1 to plug 2",
    bendHint: "Slowly, and press space, or the button, as the hand passes a plug.",
    stillHint: "For a second: what comes back now is taken for right.",
    asLoudAsMay: "It is as loud as it may be; if it does not do, turn the input's gain up.",
    stop: "Stop",
    colour: "colour",
    tick: "a tick at each event",
    tickOut:
      "The tick comes out where the sound for ears goes, at its own level; it starts quietly.",
    noTick:
      "No tick: it would come out of the output that feeds the lead. On the first screen, under where the sound goes, another one can be chosen for ears.",
    strip: (seconds: number, count: string) =>
      `Left and right over the last ${seconds} seconds: ${count}`,
    nothing: "Nothing has let go so far.",
    last: (said: string, count: string) => `${said} (${count}).`,
    watched: (long: string) => `Watched for ${long}.`,
  },
  lead: {
    plain: "The lead, plug 1 to plug 2",
    flagged: (count: number) => `The lead, plug 1 to plug 2, with ${count} flagged`,
    hand: (plug: number) => `hand at plug ${plug}`,
    space: "space",
  },
  event,
  count: (count: number) => (count === 0 ? "nothing so far" : events(count)),
  /** Where along the lead an event was. */
  place: {
    plug: (plug: number) => `at plug ${plug}`,
    tenths: (tenths: number) => `about ${tenths} tenths of the way from plug 1 to plug 2`,
    after: (long: string, plug: number) => `${long} after the hand passed plug ${plug}`,
    before: (long: string, plug: number) => `${long} before the hand passed plug ${plug}`,
    unknown: "where is not known: no plug was marked",
  },
  /** What a hook-up cannot show. */
  limits: {
    sleeve:
      "The sleeve: not tested. Output and input have one ground already, so a lost sleeve shows nowhere. A load box lets it be seen; so do ears and a meter.",
    "left only": "The right side: nothing of it comes back, so its wire was not watched.",
    "right only": "The left side: nothing of it comes back, so its wire was not watched.",
    "one input":
      "Both sides come in by one input: a lost side is seen, a lost sleeve or two wires that touch are not.",
  },
  /** Why it cannot watch, and what to do. */
  refused: {
    "no signal":
      "Nothing of the signal comes back. See that the lead is in at both ends and the input is the right one; then raise it, a step at a time.",
    clipped: "The input is cut off at the top. Turn its gain down, or go softer.",
    "too noisy to see 2 ms":
      "It is too quiet against the noise to see 2 ms. Turn the input's gain up, or go louder.",
    "sides mixed":
      "Left and right come back mixed, as by a mono switch or a lead that joins them. Take that out first, then start again.",
  },
  result: {
    stoppedBy: (trouble: string) => `${trouble} What was seen until then stands below.`,
    nothing: (long: string) => `Nothing let go in ${long}`,
    events: (count: number, long: string) => `${events(count)} in ${long}`,
    eventsAndWorst: (count: number, long: string, worst: string) =>
      `${events(count)} in ${long}, the worst: ${worst}`,
    strip: (long: string) => `Left and right over the whole run of ${long}`,
    at: (moment: string, place: string) => `At ${moment}, ${place}.`,
    worstFirst: "Worst first",
    more: (count: number) => `${count} more`,
    beside: "What this could not see, and what else there was",
    again: "Watch again",
    over: "Between the lanes: what comes over from one side to the other; hanging down, it is upside down.",
  },
  /** What the watch has to say of itself beside its events. */
  beside: {
    earlier: (count: number, until: string, broken: string) =>
      `${counted(count, "earlier event", "earlier events")} until ${until}, ${broken} broken in all, no longer told one by one.`,
    disturbed: (count: number, long: string) =>
      `${counted(count, "disturbance", "disturbances")} that no fault of a lead explains, ${long} in all: noise from elsewhere, or a hand on the metal.`,
    blind: (long: string, why: string) => `For ${long} nothing could be seen: ${why}.`,
    why: {
      "no signal": "no signal",
      clipped: "clipped",
      "too noisy to see 2 ms": "too noisy to see 2 ms",
      "sides mixed": "sides mixed",
    },
    crosstalk: (at: string, level: string) =>
      `At ${at} what comes over to the other side became ${level}.`,
    left: (at: string, level: string) =>
      `At ${at} left had gone slowly to ${level} of how it began.`,
    right: (at: string, level: string) =>
      `At ${at} right had gone slowly to ${level} of how it began.`,
  },
};
