import { catalogue } from "#core/parts/catalogue.ts";
import type { Kind } from "#core/parts/kind.ts";
import type { BuiltRig, RigPart } from "#core/rig/rig.ts";
import { redrawn } from "./redrawn.ts";

const hasSupply = ({ kind }: RigPart): boolean => {
  const { parameters }: Kind = catalogue[kind];
  return "supply" in parameters;
};

/**
 * A rig with one way to earth: a box that is drawn with a mains earth has it, and everything else is on battery. Where there are more, signals
 * also go round by the earths, past the amplifiers, and no product of matrices says that.
 */
export function oneEarth(rig: BuiltRig): BuiltRig {
  const earthed = rig.parts.find(({ settings }) => settings?.supply === "mains-earthed");
  return redrawn(rig, (part) => {
    const { settings = {} } = part;
    if (!hasSupply(part) || part.id === earthed?.id) return settings;
    return { ...settings, supply: "battery" };
  });
}
