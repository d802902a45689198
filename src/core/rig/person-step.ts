import { straight } from "./behaviour.ts";
import { controlOf } from "./controls.ts";
import type { BuiltRig } from "./rig.ts";
import type { Step } from "./steps.ts";

/** Somebody at an end of the way: who listens, or who asks and writes down; `turned`: the headphones are on the other way round on purpose. */
export function person(rig: BuiltRig, part: string, turned = false): Step {
  const has = (name: string) => name in rig.part(part).controls;
  return {
    id: part,
    shape: `${rig.part(part).kind}${turned ? ", turned round" : ""}`,
    called: ({ name, at }) => `${at}: ${name}`,
    owns: (fault) => fault.part === part,
    branch: () => 0,
    behaviour: (faults) => {
      const control = controlOf(rig, part, faults);
      if (!has("worn")) return { ...straight, mirrors: control("mirrors") === 1 };
      return {
        ...straight,
        worn: control("worn") * (turned ? -1 : 1),
        hearing: [control("left hearing"), control("right hearing")],
        mirrors: control("mirrors") === 1,
      };
    },
  };
}
