/** An object out of a file: whatever it holds. */
export type Fields = Readonly<Record<string, unknown>>;

export const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null;

export const isText = (value: unknown): value is string => typeof value === "string";

export const isTruth = (value: unknown): value is boolean => typeof value === "boolean";

export const isNumber = (value: unknown): value is number =>
  typeof value === "number" && Number.isFinite(value);

/** Whether these are there, and texts. */
export const hasTexts = (value: unknown, ...names: readonly string[]): value is Fields =>
  isObject(value) && names.every((name) => isText(value[name]));

export const areAll = (value: unknown, is: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(is);

/** Whether it was left out, or is as it must be. */
export const isMaybe = (value: unknown, is: (one: unknown) => boolean): boolean =>
  value === undefined || is(value);
