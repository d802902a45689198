import type { FlexPlace } from "#core/measurement/flex-marks.ts";
import type { FlexChange, FlexEvent, FlexRefusal } from "#core/measurement/flex-names.ts";
import type { FlexState } from "#core/measurement/flex-watch.ts";
import type { Words } from "#ui/words/use-words.ts";

/** From here on a side counts as gone, and is not said to be down by so much. */
const gone = 20;

/** An event as one says it: 'left gone for 12 ms, at the tip's wire'. */
export const eventWords = ({ figures, flex }: Words, event: FlexEvent): string =>
  flex.event({
    fault: event.fault,
    down:
      event.depth >= gone || event.fault === "mixed" ? undefined : figures.decibels(event.depth),
    breaks: event.breaks,
    lasted: figures.lasting(event.duration),
    going: event.going,
    shorted: event.cause === "short" && event.fault !== "tip to ring",
  });

/** Where along the lead an event was, by the marks beside it. */
export function placeWords(words: Words, { along, before, after }: FlexPlace): string {
  const { figures, flex } = words;
  if (along !== undefined) return alongWords(words, along);
  if (before !== undefined)
    return flex.place.after(figures.lasting(before.seconds), before.mark.plug);
  if (after !== undefined)
    return flex.place.before(figures.lasting(after.seconds), after.mark.plug);
  return flex.place.unknown;
}

function alongWords({ flex: { place } }: Words, along: number): string {
  if (along < 0.1) return place.plug(1);
  return along > 0.9 ? place.plug(2) : place.tenths(Math.round(10 * along));
}

/** How many breaks there were. */
export const countOf = ({ events, earlier }: FlexState): number =>
  events.length + (earlier?.count ?? 0);

/** Longest and deepest first. */
export const worstFirst = (events: readonly FlexEvent[]): readonly FlexEvent[] =>
  [...events].sort((a, b) => b.broken * b.depth - a.broken * a.depth);

/** What the watch has to say of itself beside its events: sentences. */
export function besideWords(words: Words, state: FlexState): readonly string[] {
  const { changes, disturbed, blind, earlier } = state;
  const { figures, flex } = words;
  const { beside } = flex;
  return [
    ...(earlier === undefined
      ? []
      : [
          beside.earlier(
            earlier.count,
            figures.moment(earlier.to),
            figures.lasting(earlier.broken),
          ),
        ]),
    ...changes.map((change) => changeWords(words, change)),
    ...(disturbed.count === 0
      ? []
      : [beside.disturbed(disturbed.count, figures.lasting(disturbed.seconds))]),
    ...Object.entries(blind).map(([why, seconds]) =>
      beside.blind(figures.lasting(seconds), beside.why[why as FlexRefusal]),
    ),
  ];
}

const changeWords = ({ figures, flex }: Words, { at, of, level }: FlexChange): string =>
  flex.beside[of](figures.moment(at), figures.decibels(level));
