import type { PartKind } from "#core/parts/catalogue.ts";
import type { Plug, Socket } from "#core/parts/part.ts";
import { fits } from "#core/parts/plugs.ts";
import { type BuiltRig, build, type Connection, type Rig } from "#core/rig/rig.ts";
import type { RigTrouble } from "#core/rig/trouble.ts";
import { rigTroubles } from "#core/rig/troubles.ts";

/** A plug in a hand. */
export type PlugEnd = Pick<Connection, "part" | "plug">;
/** A socket that something may go into. */
export type Spot = Pick<Connection, "into" | "socket">;

/** Why a drawing was left as it was. */
export type Refusal =
  | { readonly refused: "no name" }
  | { readonly refused: "marks in the name" }
  | { readonly refused: "name taken"; readonly name: string }
  | {
      readonly refused: "does not fit";
      readonly part: string;
      readonly plug: Pick<Plug, "kind" | "size">;
      readonly socket: Pick<Socket, "kind" | "size">;
    }
  | { readonly refused: "nothing free"; readonly part: string }
  | { readonly refused: "nothing joins"; readonly kind: PartKind }
  | { readonly refused: "last position" }
  | { readonly refused: "socket in use"; readonly by: string; readonly socket: string }
  | { readonly refused: "cannot be"; readonly trouble: RigTrouble; readonly name: string };

/** A box that an edit drew with more sockets than it had: which of its settings counts them, and how many it has now. */
export interface Grown {
  readonly part: string;
  readonly setting: string;
  readonly count: number;
}

/** A rig after an edit, or why it cannot be so. The same rig where the edit changes nothing. */
export type Edited =
  | { readonly rig: Rig; readonly grown?: Grown | undefined }
  | { readonly refusal: Refusal };

export const refuse = (refusal: Refusal): Edited => ({ refusal });

/** The rig where it can be, or the first thing that keeps it from being one. `before` may have plugs on adapters that nobody drew. */
export function checked(rig: Rig, before: Rig): Edited {
  const [trouble] = rigTroubles(rig);
  if (trouble !== undefined) return { refusal: ofTrouble(trouble, before) };
  const built = build(rig);
  const wrong = rig.plugged.find(
    (end) => !sizesMeet(built, end) && !before.plugged.some((one) => isSame(one, end, before, rig)),
  );
  return wrong === undefined ? { rig } : { refusal: misfit(built, wrong) };
}

/** Whether both rigs have this plug in this socket, and both parts as they are. */
const isSame = (one: Connection, end: Connection, before: Rig, rig: Rig): boolean =>
  one.part === end.part &&
  one.plug === end.plug &&
  one.into === end.into &&
  one.socket === end.socket &&
  [end.part, end.into].every((id) => partOf(before, id) === partOf(rig, id));

const partOf = ({ parts }: Rig, id: string) => parts.find((part) => part.id === id);

export const plugAt = (rig: BuiltRig, { part, plug }: PlugEnd): Plug | undefined =>
  rig.part(part).plugs.find(({ name }) => name === plug);

export const socketAt = (rig: BuiltRig, { into, socket }: Spot): Socket | undefined =>
  rig.part(into).sockets.find(({ name }) => name === socket);

/** A rig without some parts, what is plugged into them, and who wears them. */
export function without(rig: Rig, gone: readonly string[]): Rig {
  const stays = (id: string) => !gone.includes(id);
  return {
    ...rig,
    parts: rig.parts.filter(({ id }) => stays(id)),
    plugged: rig.plugged.filter(({ part, into }) => stays(part) && stays(into)),
    positions: rig.positions.filter(({ wears }) => stays(wears)),
  };
}

function sizesMeet(rig: BuiltRig, end: Connection): boolean {
  const [plug, socket] = [plugAt(rig, end), socketAt(rig, end)];
  return plug !== undefined && socket !== undefined && fits(plug, socket);
}

function misfit(rig: BuiltRig, end: Connection): Refusal {
  const [plug, socket] = [plugAt(rig, end), socketAt(rig, end)];
  return plug === undefined || socket === undefined
    ? { refused: "nothing free", part: end.into }
    : { refused: "does not fit", part: end.part, plug, socket };
}

/** A trouble with the name of what it is about. A socket that is gone was in use. */
function ofTrouble(trouble: RigTrouble, before: Rig): Refusal {
  if (trouble.trouble === "no such socket")
    return { refused: "socket in use", by: trouble.end.part, socket: trouble.end.socket };
  return { refused: "cannot be", trouble, name: nameIn(trouble, before) };
}

function nameIn(trouble: RigTrouble, { positions }: Rig): string {
  if ("end" in trouble) return trouble.end.part;
  if ("part" in trouble) return trouble.part;
  if (!("id" in trouble)) return "";
  return positions.find(({ wears }) => wears === trouble.id)?.name ?? trouble.id;
}
