import type { PartKind } from "#core/parts/catalogue.ts";
import type { Prediction } from "#core/patching/prediction.ts";
import type { Effect } from "#core/rig/effect.ts";
import { byLead, ends, predicted, single } from "./feeds.ts";

/** A stereo box into one balanced input that is heard in both ears. */
const stereoInto = (kind: PartKind) =>
  ends(kind, {}, { supply: "mains-earthed", input: "one balanced jack" });

/** Troubles that are no fault of any part but of the lead that was taken: what the patch as it was would have been foretold. */
export const foretold: Readonly<Record<string, readonly [Prediction, effects: readonly Effect[]]>> =
  {
    "FC-01": [
      predicted(
        ends("mixer", { balancing: "actively balanced" }),
        byLead("TRS lead", single("send")),
      ),
      ["mono, one ear inverted"],
    ],
    "FC-04": [
      predicted(stereoInto("laptop"), byLead("TRS lead", single("phones"))),
      ["difference"],
    ],
    "FC-05": [
      predicted(stereoInto("instrument"), byLead("TRS lead", single("phones"))),
      ["difference"],
    ],
    "FC-07": [predicted(ends("instrument"), byLead("TS lead", single("phones"))), ["right gone"]],
    "FC-08": [
      predicted(
        ends("console", { balancing: "actively balanced" }),
        byLead("XLR to TRS lead", single("main left")),
      ),
      ["left in both, one inverted", "mono, one ear inverted"],
    ],
  };
