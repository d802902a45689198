import type { Happening } from "#core/checks/finding.ts";
import { type Candidate, whatThisIs } from "#core/proving/candidates.ts";
import { sidesOf } from "#core/proving/ends.ts";
import { leadRig } from "#core/proving/lead-rig.ts";
import type { Rig } from "#core/rig/rig.ts";
import { rigIn, type Said } from "#core/session/log.ts";
import { begun, type Page } from "./page.ts";
import { asUnknown, type LeadSaid } from "./prove-said.ts";

/** A lead of which all is said that a session wants. */
export type Chosen = LeadSaid & Required<Pick<LeadSaid, "kind" | "by">>;

/** A session of one lead, from its beginning; `you`: whoever has it in hand. */
export function proving(page: Page, lead: Chosen, you: string, at: number): Page {
  // The next lead of a kind has the very rig of the last: all that follows from a rig is remembered by it.
  const last = rigIn(page.log);
  const made = rigOf(lead, you);
  const next = begun(page, last?.name === made.name ? last : made, undefined, at);
  return { ...next, view: { screen: "prove", lead: { ...lead, plugged: false } } };
}

/** Its rig. Whoever has the lead in hand listens, too. */
function rigOf({ kind, by, unknown }: Chosen, you: string): Rig {
  const rig = leadRig({ kind, by });
  const named = { ...rig, positions: rig.positions.map((one) => ({ ...one, name: you })) };
  return unknown ? asUnknown(named) : named;
}

/** What a lead that nobody knows may be, the likeliest first. */
export function candidatesFor(
  { kind, by }: Chosen,
  happenings: readonly Happening[],
): readonly Candidate[] {
  const sides = sidesOf(kind);
  if (sides === undefined) throw new RangeError(`a ${kind} is no lead with two ends`);
  return whatThisIs({ ends: [sides.one.end, sides.other.end], by }, happenings);
}

/** A lead that nobody knows is drawn anew as soon as another kind goes better with what was found. */
export function redrawn(
  lead: Chosen,
  you: string,
  happenings: readonly Happening[],
): readonly Said[] {
  if (!lead.unknown) return [];
  const [best] = candidatesFor(lead, happenings);
  if (best === undefined || best.kind === lead.kind || best.probability < 0.5) return [];
  return [{ entry: "drawing", rig: rigOf({ ...lead, kind: best.kind }, you) }];
}
