import { kindOf } from "./kind.ts";
import { leadOf } from "./lead.ts";
import { forked } from "./lead-shapes.ts";
import { jackSize } from "./leads.ts";
import { runParameters } from "./wire.ts";

const parameters = { ...runParameters, stemSize: jackSize };

/** TRS to two TS: tip to the plug marked left, ring to the one marked right (handbook, section 2). */
export const insertY = kindOf("lead", parameters, ({ stemSize, ...run }) =>
  leadOf(forked(stemSize, "TS"), run),
);

/** With three-contact plugs whose rings are left alone: an actively balanced output keeps its cold leg (handbook, section 4). */
export const insertYRingsUnused = kindOf("lead", parameters, ({ stemSize, ...run }) =>
  leadOf(forked(stemSize, "TRS"), run),
);

/** With ring and sleeve joined in the plugs at the outputs, as cross-coupled and transformer outputs want it (handbook, section 4). */
export const insertYRingToSleeve = kindOf("lead", parameters, ({ stemSize, ...run }) =>
  leadOf(forked(stemSize, "TRS", "to sleeve"), run),
);

/** One stereo socket to left and right RCA. */
export const trsToTwoRca = kindOf("lead", parameters, ({ stemSize, ...run }) =>
  leadOf(forked(stemSize, "RCA"), run),
);
