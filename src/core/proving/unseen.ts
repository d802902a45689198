import { catalogue } from "#core/parts/catalogue.ts";
import { behaviourAt } from "#core/rig/ear-matrix.ts";
import type { Rig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { modelFor } from "#core/session/derive.ts";
import type { Ohms } from "#core/units/units.ts";
import type { Method } from "./choice.ts";
import { leadId, provedAt } from "./lead-rig.ts";
import { meterView } from "./meter-view.ts";
import { wiringOf } from "./wiring.ts";

/** What one way of proving cannot see of one lead between these boxes. Worked out from their circuits. */
export interface Unseen {
  /** Faults under which all would be found as of a healthy lead. */
  readonly faults: readonly RigFault[];
  /** Wires that could be missing and nobody would find it, each from contact to contact. */
  readonly wires: readonly (readonly [from: string, to: string])[];
  /** Ten times the capacitance would not show. */
  readonly capacitance: boolean;
}

type Model = ReturnType<typeof modelFor>["model"];

/** What a way of proving does not see in a rig of `leadRig`. */
export function unseenBy(by: Method, rig: Rig): Unseen {
  const { model } = modelFor(rig);
  const tells = telling(by, model);
  const own = model.rig.part(leadId).faults;
  const faults = model.root.faults.filter(
    (fault) =>
      fault.part === leadId && own.some(({ name, at }) => name === fault.name && at === fault.at),
  );
  return {
    faults: faults.filter((fault) => !tells.fault(fault)),
    wires: missing(model, tells.edited),
    capacitance: hasCapacitance(rig) && !tells.other(withCapacitance(rig)),
  };
}

interface Telling {
  /** Whether a fault of the rig would show. */
  readonly fault: (fault: RigFault) => boolean;
  /** Whether something would show that is no fault of the list. */
  readonly edited: (fault: RigFault) => boolean;
  /** Whether another rig would show as otherwise than this one. */
  readonly other: (rig: Rig) => boolean;
}

function telling(by: Method, model: Model): Telling {
  if (by === "meter") {
    const view = meterView(model.rig);
    const shows = (fault: RigFault) => view.all([fault]) !== view.all([]);
    return {
      fault: shows,
      edited: shows,
      other: (rig) => meterView(modelFor(rig).model.rig).all([]) !== view.all([]),
    };
  }
  const audible = model.audible(provedAt);
  return {
    fault: (fault) => audible(model.under(provedAt, [fault])),
    edited: (fault) => audible(model.pool.number(behaviourAt(model.rig, provedAt, [fault]))),
    other: (rig) => audible(model.pool.number(behaviourAt(modelFor(rig).model.rig, provedAt, []))),
  };
}

/** What is no conductor: a bare contact in its plastic. */
const conducts: Ohms = 1e6;

/** Wires that would be open with one conductor taken out, where that would not show. */
function missing(
  { rig }: Model,
  shows: (fault: RigFault) => boolean,
): readonly (readonly [from: string, to: string])[] {
  const silent = rig
    .part(leadId)
    .body.filter((one) => one.kind === "resistor" && one.ohms < conducts)
    .map(({ name }) => cut(name))
    .filter((fault) => !shows(fault));
  const wires = silent.flatMap((fault) =>
    wiringOf(rig, [fault]).filter(({ state }) => state === "open"),
  );
  return [...new Map(wires.map(({ from, to }) => [`${from} ${to}`, [from, to] as const])).values()];
}

/** A conductor taken out of the lead. */
const cut = (element: string): RigFault => ({
  id: `${leadId} / ${element} cut`,
  name: "something not on the list",
  part: leadId,
  place: leadId,
  at: "body",
  edits: [{ edit: "ohms", element, ohms: 1e9 }],
  weight: 0,
  slot: "",
  seen: false,
  repair: 0,
});

const leadOf = (rig: Rig) => rig.parts.find(({ id }) => id === leadId);

const hasCapacitance = (rig: Rig): boolean => {
  const lead = leadOf(rig);
  return lead !== undefined && "faradsPerMetre" in catalogue[lead.kind].parameters;
};

/** The same rig, its lead with as much capacitance as a lead has at most. */
const withCapacitance = (rig: Rig): Rig => ({
  ...rig,
  parts: rig.parts.map((part) =>
    part.id === leadId ? { ...part, settings: { ...part.settings, faradsPerMetre: 1e-9 } } : part,
  ),
});
