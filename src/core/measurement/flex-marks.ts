import type { Seconds } from "#core/units/units.ts";
import type { FlexEvent } from "./flex-names.ts";

/** The hand passed a plug: 1 is the end it is bent from first. */
export interface FlexMark {
  readonly at: Seconds;
  readonly plug: 1 | 2;
}

/** Where an event lies among the marks. */
export interface FlexPlace {
  readonly before?: { readonly mark: FlexMark; readonly seconds: Seconds };
  readonly after?: { readonly mark: FlexMark; readonly seconds: Seconds };
  /**
   * Along the lead, zero at plug 1 and one at plug 2, if the hand went evenly; only between marks of both plugs. The beginning of the event
   * counts: there it first gave way.
   */
  readonly along?: number;
}

/** Guesses the place along the lead from the marks around an event, in whichever order they are told. */
export function flexPlace({ at }: Pick<FlexEvent, "at">, marks: readonly FlexMark[]): FlexPlace {
  const before = marks.filter((mark) => mark.at <= at).reduce(later, undefined);
  const after = marks.filter((mark) => mark.at > at).reduce(sooner, undefined);
  return {
    ...(before === undefined ? {} : { before: { mark: before, seconds: at - before.at } }),
    ...(after === undefined ? {} : { after: { mark: after, seconds: after.at - at } }),
    ...alongOf(at, before, after),
  };
}

const later = (best: FlexMark | undefined, mark: FlexMark) =>
  best === undefined || mark.at >= best.at ? mark : best;
const sooner = (best: FlexMark | undefined, mark: FlexMark) =>
  best === undefined || mark.at < best.at ? mark : best;

function alongOf(at: Seconds, before?: FlexMark, after?: FlexMark): { along?: number } {
  if (before === undefined || after === undefined || before.plug === after.plug) return {};
  const share = (at - before.at) / (after.at - before.at);
  return { along: before.plug === 1 ? share : 1 - share };
}
