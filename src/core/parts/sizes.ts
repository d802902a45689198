import { catalogue, type PartKind } from "./catalogue.ts";
import { countsSockets, type Settings } from "./kind.ts";
import type { Part, Plug, Socket } from "./part.ts";
import { fits, jackSizes } from "./plugs.ts";

/** What a part of a rig is and how it is set. */
interface Drawn {
  readonly kind: PartKind;
  readonly settings?: Settings;
}

/** Every choice of jack sizes that a kind comes in. */
export function sizesOf(kind: PartKind, settings: Settings = {}): readonly Settings[] {
  const names = Object.entries(catalogue[kind].parameters).flatMap(([name, parameter]) =>
    "choices" in parameter && parameter.choices.every(isSize) ? [name] : [],
  );
  return names.reduce<readonly Settings[]>(
    (some, name) => some.flatMap((one) => jackSizes.map((size) => ({ ...one, [name]: size }))),
    [settings],
  );
}

const isSize = (word: string): boolean => jackSizes.some((size) => size === word);

/** How a kind usually comes where that is not what is typical of one alone: most headphone amplifiers have four outputs. Common practice, no source. */
const usually: Readonly<Partial<Record<PartKind, Settings>>> = {
  "headphone amplifier": { outputs: 4 },
};

/** Something of a kind that nothing was said of yet, as it usually comes. */
export function newOf(id: string, kind: PartKind) {
  const settings = usually[kind];
  return { id, kind, ...(settings === undefined ? {} : { settings }) };
}

/** What says how many sockets a part has; nothing where its kind always has the same. */
export function countedIn({ kind, settings = {} }: Drawn) {
  for (const [name, parameter] of Object.entries(catalogue[kind].parameters)) {
    if ("choices" in parameter || !countsSockets(parameter.unit)) continue;
    return { name, count: Number(settings[name] ?? parameter.typical), most: parameter.most };
  }
  return undefined;
}

/** A part in every choice of jack sizes it comes in, as it is now first; then with more sockets, up to as many as are in use of it. */
export function sized<One extends Drawn>(part: One, inUse = 0): readonly One[] {
  const { name = "", count = 0, most = 0 } = countedIn(part) ?? {};
  const more = Array.from({ length: Math.max(Math.min(inUse, most) - count, 0) }, (_, at) => ({
    ...part.settings,
    [name]: count + at + 1,
  }));
  const all = [part.settings, ...more].flatMap((one) => sizesOf(part.kind, one));
  return [part, ...all.map((settings) => ({ ...part, settings }))];
}

/** A part in the size and number by which it is as is asked, itself where it is so already; nothing where it comes in none. */
export const partSo = <One extends Drawn>(
  part: One,
  isSo: (made: Part) => boolean,
  inUse = 0,
): One | undefined =>
  sized(part, inUse).find(({ kind, settings }) => isSo(catalogue[kind].make(settings)));

/** The first plug of a part that goes into a socket. */
export const plugFor = (part: Part, socket: Socket): Plug | undefined =>
  part.plugs.find((plug) => fits(plug, socket));
