import { catalogue } from "#core/parts/catalogue.ts";
import type { Part, Socket } from "#core/parts/part.ts";
import type { RigPart } from "#core/rig/rig.ts";

export const made = ({ kind, settings }: Pick<RigPart, "kind" | "settings">): Part =>
  catalogue[kind].make(settings);

const onSide = (part: RigPart, wanted: Socket["side"]): readonly Socket[] =>
  made(part).sockets.filter(({ side }) => side === wanted);

export const outputsOf = (part: RigPart): readonly Socket[] => onSide(part, "out");
export const inputsOf = (part: RigPart): readonly Socket[] => onSide(part, "in");
