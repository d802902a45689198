import type { BuiltRig } from "./rig.ts";
import type { RigFault } from "./rig-faults.ts";

/** How the controls of a part stand under a fault set, by name. The reader throws on a control the part lacks. */
export function controlOf(
  rig: BuiltRig,
  id: string,
  faults: readonly RigFault[],
): (name: string) => number {
  const values = new Map(Object.entries(rig.part(id).controls));
  for (const { part, edits } of faults)
    for (const edit of edits)
      if (part === id && edit.edit === "control") values.set(edit.control, edit.value);
  return (name) => {
    const value = values.get(name);
    if (value === undefined) throw new Error(`${id} has no control named ${name}`);
    return value;
  };
}
