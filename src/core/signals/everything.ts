import { signalNames, signals } from "./catalogue.ts";
import { instrumentNames, instruments } from "./instruments.ts";
import type { Signal } from "./signal.ts";

export const everyName = [...signalNames, ...instrumentNames] as const;
export type AnyName = (typeof everyName)[number];

/** Every sound there is, for ears and for instruments. For files alone: a player takes the names of `catalogue.ts`. */
export const everything: Readonly<Record<AnyName, Signal>> = { ...signals, ...instruments };
