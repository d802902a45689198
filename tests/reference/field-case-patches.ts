import type { PartKind } from "#core/parts/catalogue.ts";
import { type Prediction, predictionAt } from "#core/patching/prediction.ts";
import { faultOf } from "./changed-rig.ts";
import { byLead, ends, predicted, rigWith, single } from "./feeds.ts";

/** A stereo box into one balanced input that is heard in both ears. */
const stereoInto = (kind: PartKind) =>
  ends(kind, {}, { supply: "mains-earthed", input: "one balanced jack" });

/** A balanced mono send by a stereo lead into an amplifier that adds its two sides. */
function addedUp(): Prediction {
  const rig = rigWith(
    ends("mixer", { balancing: "actively balanced" }),
    byLead("TRS lead", single("send")),
  );
  return predictionAt(rig, "headphones", [faultOf(rig, "amplifier / settings / mono")]);
}

/** Troubles that are no fault of any part but of the lead that was taken: what the patch as it was would have been foretold. */
export const foretold: Readonly<Record<string, Prediction>> = {
  "FC-01": addedUp(),
  "FC-04": predicted(stereoInto("laptop"), byLead("TRS lead", single("phones"))),
  "FC-05": predicted(stereoInto("instrument"), byLead("TRS lead", single("phones"))),
  "FC-07": predicted(ends("instrument"), byLead("TS lead", single("phones"))),
  "FC-08": predicted(
    ends("console", { balancing: "actively balanced" }),
    byLead("XLR to TRS lead", single("main left")),
  ),
};

/** A patch with nothing wrong: what none of these cases may be told. */
export const straight: Prediction = predicted(ends("mixer"), byLead("TRS lead", single("phones")));
