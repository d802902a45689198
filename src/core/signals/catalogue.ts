import { burstPair } from "./burst-pair.ts";
import { leftIdent, rightIdent } from "./idents.ts";
import type { Signal } from "./signal.ts";
import { silence } from "./silence.ts";

/** Every sound there is, by name. */
export const signalNames = ["left-ident", "right-ident", "burst-pair", "silence"] as const;
export type SignalName = (typeof signalNames)[number];

export const signals: Readonly<Record<SignalName, Signal>> = {
  "left-ident": leftIdent,
  "right-ident": rightIdent,
  "burst-pair": burstPair,
  silence,
};
