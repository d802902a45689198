import type { PartKind } from "#core/parts/catalogue.ts";
import type { Socket } from "#core/parts/part.ts";
import type { Ends, Patch } from "#core/patching/patch.ts";
import { firstPatch, fitsPatch, likePatch, withAt } from "#core/patching/patches.ts";
import { made, outputsOf } from "#core/patching/sockets-of.ts";
import { stageParameter } from "#core/patching/stages.ts";
import type { Want } from "#core/patching/wants.ts";
import type { Connection, RigPart } from "#core/rig/rig.ts";
import { carriedBy, shown } from "#ui/parts/content.ts";

/** What of the picture is being chosen. */
export type Opened = "from" | "wires" | "into" | "worn";

/** A plug in a hand, to be put somewhere else. */
export type PlugEnd = Pick<Connection, "part" | "plug">;

/** What somebody has and wants, before anything is plugged in. Plain data: all that is shown follows from it. */
export interface Plan extends Ends {
  readonly patch: Patch;
  /** The output it leaves by. */
  readonly socket: string;
  readonly want: Want;
  /** Nobody here can say what the output stage is. */
  readonly stageUnknown: boolean;
  readonly open?: Opened | undefined;
  readonly inHand?: PlugEnd | undefined;
  /** As it was before the last change. */
  readonly before?: Plan | undefined;
}

const partOf = (kind: PartKind, settings = {}): RigPart => ({ id: kind, kind, settings });

/** Whether headphones belong in an output: both sides are on its one jack. One that harms is drawn with them, to be refused. */
function isForHeadphones(part: RigPart, socket: Socket): boolean {
  if (socket.harms !== undefined) return true;
  const [tip, ring] = carriedBy(made(part), socket).map(({ content }) => shown(content).carries);
  return socket.kind !== "link" && tip === "left" && ring === "right";
}

/** What is heard in the end, where the feed goes into a box with such an output: headphones of its size. */
function wornOn(into: RigPart, kind: PartKind = "headphones"): RigPart | undefined {
  const outputs = outputsOf(into).slice(0, 1);
  return outputs.some((socket) => isForHeadphones(into, socket))
    ? withAt(outputs, partOf(kind))
    : undefined;
}

const ends = (from: RigPart, into: RigPart, kind?: PartKind): Ends => {
  const worn = wornOn(into, kind);
  return { from, into, ...(worn === undefined ? {} : { worn }) };
};

/** A small mixer's headphone socket into a headphone amplifier: what most people stand before. */
export function firstPlan(): Plan {
  const both = ends(partOf("mixer"), partOf("headphone amplifier"));
  const socket = "phones";
  const patch = firstPatch(both, socket);
  return { ...both, socket, patch, want: "stereo", stageUnknown: false };
}

/** The next value, with the one before kept to come back to. */
const changed = (plan: Plan, change: Partial<Plan>): Plan => ({
  ...plan,
  inHand: undefined,
  ...change,
  before: { ...plan, inHand: undefined },
});

/** Other ends, with leads of the same kind where they fit. */
function rejoined(plan: Plan, { from, into, worn }: Ends, socket: string): Plan {
  const next = { from, into, ...(worn === undefined ? {} : { worn }) };
  const patch = likePatch(next, socket, plan.patch);
  const { worn: _, ...rest } = changed(plan, { from, into, socket, patch });
  return worn === undefined ? rest : { ...rest, worn };
}

/** Another box to come from; what is known of its inside is forgotten. */
export function withFrom(plan: Plan, kind: PartKind): Plan {
  const from = partOf(kind);
  const { into, worn } = plan;
  const second =
    into.kind === kind ? { ...into, id: `second ${kind}` } : { ...into, id: into.kind };
  const [first] = outputsOf(from);
  const next = rejoined(plan, { from, into: second, ...(worn ? { worn } : {}) }, first?.name ?? "");
  return { ...next, stageUnknown: false };
}

/** Another thing to go into. */
export function withInto(plan: Plan, kind: PartKind): Plan {
  const id = plan.from.kind === kind ? `second ${kind}` : kind;
  const into = withAt(outputsOf(plan.from), { ...partOf(kind), id }) ?? { ...partOf(kind), id };
  return rejoined(plan, ends(plan.from, into, plan.worn?.kind), plan.socket);
}

/** Other headphones at the amplifier. */
export function withWorn(plan: Plan, kind: PartKind): Plan {
  const worn = wornOn(plan.into, kind);
  return worn === undefined ? plan : changed(plan, { worn });
}

/** One thing said of one part; left out again where `value` is. The value has been found to be understood. */
export function withSetting(
  plan: Plan,
  id: string,
  name: string,
  value: number | string | undefined,
): Plan {
  const set = (part: RigPart): RigPart =>
    part.id === id ? { ...part, settings: put(part) } : part;
  const put = ({ settings = {} }: RigPart) => {
    const rest = Object.entries(settings).filter(([one]) => one !== name);
    return Object.fromEntries(value === undefined ? rest : [...rest, [name, value]]);
  };
  const [from, into] = [set(plan.from), set(plan.into)];
  const worn = plan.worn && set(plan.worn);
  const patch = { ...plan.patch, wires: plan.patch.wires.map(set) };
  const both: Ends = { from, into, ...(worn === undefined ? {} : { worn }) };
  if (fitsPatch(both, patch)) return changed(plan, { ...both, patch });
  const sockets = outputsOf(from).map((socket) => socket.name);
  const socket = sockets.includes(plan.socket) ? plan.socket : (sockets[0] ?? "");
  return rejoined(plan, { ...ends(from, into, worn?.kind), ...(worn ? { worn } : {}) }, socket);
}

/** What the output stage is; nothing where nobody knows. */
export const withStage = (plan: Plan, stage: string | undefined): Plan => ({
  ...withSetting(plan, plan.from.id, stageParameter, stage),
  stageUnknown: stage === undefined,
});

export const withPatch = (plan: Plan, patch: Patch): Plan => {
  const [first] = patch.plugged.filter(({ into }) => into === plan.from.id);
  const kept = patch.plugged.some(
    ({ into, socket }) => into === plan.from.id && socket === plan.socket,
  );
  return changed(plan, {
    patch,
    socket: kept ? plan.socket : (first?.socket ?? plan.socket),
    open: undefined,
  });
};

export const wanting = (plan: Plan, want: Want): Plan => ({ ...plan, want });

/** Shows what may be chosen for a place of the picture, or puts it away again. */
export const opened = (plan: Plan, open: Opened): Plan => ({
  ...plan,
  open: plan.open === open ? undefined : open,
});

export const closed = (plan: Plan): Plan => ({ ...plan, open: undefined });

/** As it was before the last change, what is open left alone. */
export const undone = (plan: Plan): Plan =>
  plan.before === undefined ? plan : { ...plan.before, want: plan.want, open: plan.open };
