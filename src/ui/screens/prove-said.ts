import type { PartKind } from "#core/parts/catalogue.ts";
import { type Method, provedIn } from "#core/proving/choice.ts";
import { type LeadEnd, sidesOf } from "#core/proving/ends.ts";
import type { Rig } from "#core/rig/rig.ts";

/** What was said of a lead that is to be proved. With a way of proving it, the page's log is its session. */
export interface LeadSaid {
  readonly one?: LeadEnd;
  readonly other?: LeadEnd;
  /** What it should be; of one that nobody knows, what it looks like so far. */
  readonly kind?: PartKind;
  /** What it is has to be told. */
  readonly unknown?: boolean;
  readonly by?: Method;
  /** It was said to be plugged in. */
  readonly plugged?: boolean;
}

/** What was said before the last of it; nothing where nothing was said. */
export function saidBefore(said: LeadSaid): LeadSaid | undefined {
  const { one, other, kind, unknown, by, plugged } = said;
  if (plugged) return { ...said, plugged: false };
  if (by !== undefined && kind !== undefined && !unknown) return { ...ends(one, other), kind };
  if (kind !== undefined) return ends(one, other);
  if (other !== undefined) return ends(one);
  return one === undefined ? undefined : {};
}

const ends = (one?: LeadEnd, other?: LeadEnd): LeadSaid => ({
  ...(one === undefined ? {} : { one }),
  ...(other === undefined ? {} : { other }),
});

/** Before the name of a rig whose lead nobody knows. */
const unknownBefore = "unknown, ";

/** The rig of a lead that nobody knows, drawn as what it looks like so far. */
export const asUnknown = (rig: Rig): Rig => ({ ...rig, name: `${unknownBefore}${rig.name}` });

/** The lead that a rig is drawn for, where it is one that is proved: such a rig is named for the way. */
export function leadIn(rig: Rig): LeadSaid | undefined {
  const lead = provedIn(rig);
  const part = rig.parts.find(({ kind }) => kind === lead?.kind);
  const sides = part && sidesOf(part.kind, part.settings);
  return (
    lead && {
      ...ends(sides?.one.end, sides?.other.end),
      ...lead,
      ...(rig.name.startsWith(unknownBefore) ? { unknown: true } : {}),
    }
  );
}
