import { partCatalogue, type Rig } from "#core/index.ts";
import type { Path } from "./problem.ts";

/** The paths of the keys that a value has and what was understood of it lacks. */
export function unknownKeys(value: unknown, understood: unknown, path: Path = []): readonly Path[] {
  if (!isObject(value) || !isObject(understood)) return [];
  return Object.keys(value).flatMap((key) => {
    const step = [...path, Array.isArray(value) ? Number(key) : key];
    return Object.hasOwn(understood, key) ? unknownKeys(value[key], understood[key], step) : [step];
  });
}

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** Settings and controls that a part's kind lacks: they are kept and not read. */
export const unreadIn = ({ parts }: Rig, at: Path): readonly Path[] =>
  parts.flatMap(({ kind, settings = {}, controls = {} }, index) => {
    const { parameters, make } = partCatalogue[kind];
    const names = (of: object, known: object, key: string): readonly Path[] =>
      Object.keys(of)
        .filter((name) => !Object.hasOwn(known, name))
        .map((name) => [...at, "parts", index, key, name]);
    return [
      ...names(settings, parameters, "settings"),
      ...names(controls, make(settings).controls, "controls"),
    ];
  });
