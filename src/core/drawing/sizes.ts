import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import type { Part, Plug, Socket } from "#core/parts/part.ts";
import { fits, jackSizes } from "#core/parts/plugs.ts";

/** Every choice of jack sizes a kind comes in, as it is set now first. */
export function sized(kind: PartKind, settings: Settings = {}): readonly Settings[] {
  const names = Object.entries(catalogue[kind].parameters).flatMap(([name, parameter]) =>
    "choices" in parameter && parameter.choices.every(isSize) ? [name] : [],
  );
  const all = names.reduce<readonly Settings[]>(
    (some, name) => some.flatMap((one) => jackSizes.map((size) => ({ ...one, [name]: size }))),
    [settings],
  );
  return [settings, ...all];
}

const isSize = (word: string): boolean => jackSizes.some((size) => size === word);

/** The settings of a kind by which it is as is asked; nothing where it comes in none. */
export const settingsSo = (
  kind: PartKind,
  settings: Settings | undefined,
  isSo: (part: Part) => boolean,
): Settings | undefined => sized(kind, settings).find((some) => isSo(catalogue[kind].make(some)));

/** The first plug of a part that goes into a socket. */
export const plugFor = (part: Part, socket: Socket): Plug | undefined =>
  part.plugs.find((plug) => fits(plug, socket));
