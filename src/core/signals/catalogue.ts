import { lineIdent, stereoIdent } from "./broken-tones.ts";
import { burstPair, highPair } from "./burst-pair.ts";
import { buzzSearch } from "./buzz-search.ts";
import { click } from "./click.ts";
import { highLeft, highRight } from "./high-idents.ts";
import { hum50, hum60 } from "./hums.ts";
import { leftIdent, rightIdent } from "./idents.ts";
import { lineUp } from "./line-up.ts";
import { balanceTone, pinkNoise, whiteNoise } from "./noises.ts";
import { polarityPulse } from "./polarity-pulse.ts";
import { rotation } from "./rotation.ts";
import { sealCheck } from "./seal-check.ts";
import type { Signal } from "./signal.ts";
import { silence } from "./silence.ts";

/** Every sound that may be played to ears, by name. What is for instruments alone is in `instruments.ts`. */
export const signalNames = [
  "left-ident",
  "right-ident",
  "burst-pair",
  "silence",
  "line-up",
  "stereo-ident",
  "line-ident",
  "high-pair",
  "high-left",
  "high-right",
  "polarity-pulse",
  "pink-noise",
  "white-noise",
  "balance-tone",
  "rotation",
  "buzz-search",
  "seal-check",
  "click",
  "hum-50",
  "hum-60",
] as const;
export type SignalName = (typeof signalNames)[number];

export const signals: Readonly<Record<SignalName, Signal>> = {
  "left-ident": leftIdent,
  "right-ident": rightIdent,
  "burst-pair": burstPair,
  silence,
  "line-up": lineUp,
  "stereo-ident": stereoIdent,
  "line-ident": lineIdent,
  "high-pair": highPair,
  "high-left": highLeft,
  "high-right": highRight,
  "polarity-pulse": polarityPulse,
  "pink-noise": pinkNoise,
  "white-noise": whiteNoise,
  "balance-tone": balanceTone,
  rotation,
  "buzz-search": buzzSearch,
  "seal-check": sealCheck,
  click,
  "hum-50": hum50,
  "hum-60": hum60,
};
