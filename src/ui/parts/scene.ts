import type { Plug, Socket } from "#core/parts/part.ts";
import type { Ends, Patch } from "#core/patching/patch.ts";
import type { Prediction } from "#core/patching/prediction.ts";
import { inputsOf, made, outputsOf } from "#core/patching/sockets-of.ts";
import type { Effect } from "#core/rig/effect.ts";
import { type BuiltRig, type Connection, plugOf, type RigPart } from "#core/rig/rig.ts";
import { type Carried, carriedBy, nothing, type Shown, shown } from "./content.ts";
import type { PlanCounts } from "./plan-shape.ts";
import { type Wired, wiredInto } from "./wired.ts";

/** Two ends and what is between them. */
type Patched = Ends & { readonly patch: Patch };

/** A plug in front of a socket, by the socket's row. */
export interface SeenPlug {
  readonly end: Connection;
  readonly plug: Plug;
  readonly row: number;
}

/** An output of what one has, and what is on its contacts. */
export interface SeenOutput {
  readonly socket: Socket;
  readonly carried: readonly Carried[];
}

/** What the picture shows of a plan. */
export interface Scene {
  readonly outputs: readonly SeenOutput[];
  readonly inputs: readonly Socket[];
  readonly nearPlugs: readonly SeenPlug[];
  readonly farPlugs: readonly SeenPlug[];
  readonly nearAdapters: readonly RigPart[];
  readonly farAdapters: readonly RigPart[];
  readonly wired: Wired;
  readonly ears: readonly [Shown, Shown];
  /** What becomes of the two sides, once it is known. */
  readonly effect?: Effect;
}

/** So many sockets are drawn; a box may have 64 alike. */
const most = 8;

const unwired: Wired = { starts: [], mouths: [] };

/** Everything the picture needs, from what somebody has, the rig it makes and what that will sound like. */
export function sceneOf(plan: Patched, rig: BuiltRig | undefined, prediction?: Prediction): Scene {
  const box = made(plan.from);
  const outputs = outputsOf(plan.from).slice(0, most);
  const inputs = inputsOf(plan.into);
  const [near, far] = adaptersOf(plan);
  return {
    outputs: outputs.map((socket) => ({ socket, carried: carriedBy(box, socket) })),
    inputs,
    nearPlugs: plugsInto(plan, rig, plan.from.id, outputs),
    farPlugs: plugsInto(plan, rig, plan.into.id, inputs),
    nearAdapters: near,
    farAdapters: far,
    wired: rig === undefined ? unwired : wiredInto(rig, plan.into.id),
    ears: earsOf(prediction),
    ...(prediction === undefined ? {} : { effect: prediction.effect }),
  };
}

/** What the layout hangs on. */
export const countsOf = (scene: Scene): PlanCounts => ({
  outputs: scene.outputs.length,
  inputs: scene.inputs.length,
  used: scene.nearPlugs.map(({ row }) => row),
  nearAdapters: scene.nearAdapters.length,
  farAdapters: scene.farAdapters.length,
});

const plugsInto = (
  { patch }: Patched,
  rig: BuiltRig | undefined,
  box: string,
  sockets: readonly Socket[],
): readonly SeenPlug[] =>
  rig === undefined
    ? []
    : patch.plugged
        .filter(({ into }) => into === box)
        .map((end) => ({
          end,
          plug: plugOf(rig.part(end.part), end.plug),
          row: sockets.findIndex(({ name }) => name === end.socket),
        }))
        .filter(({ row }) => row >= 0)
        .sort((one, other) => one.row - other.row);

/** What other plugs stand in: at the end of what one has, and at that of what it goes into. */
function adaptersOf({ patch: { wires, plugged }, into }: Patched) {
  const passed = wires.filter(({ id }) => plugged.some((end) => end.into === id));
  const atFar = (id: string): boolean =>
    plugged.some((end) => end.part === id && (end.into === into.id || atFar(end.into)));
  return [passed.filter(({ id }) => !atFar(id)), passed.filter(({ id }) => atFar(id))] as const;
}

/** Weaker than this and nothing arrives at all: 30 dB, as in the effects. */
const least = 0.032;

function earsOf(prediction?: Prediction): readonly [Shown, Shown] {
  if (prediction === undefined) return [nothing, nothing];
  const [ll, lr, rl, rr] = prediction.gains;
  const strongest = Math.max(...prediction.gains.map(Math.abs), least);
  return [shown({ left: ll, right: lr }, strongest), shown({ left: rl, right: rr }, strongest)];
}
