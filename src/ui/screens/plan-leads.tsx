import { useState } from "preact/hooks";
import type { Patch } from "#core/patching/patch.ts";
import { choicesOf } from "#core/patching/patches.ts";
import { english } from "#core/words/english.ts";
import { LeadPicture } from "#ui/parts/lead-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { withPatch } from "./plan.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { patchName } from "./plan-words.ts";

/** Leads that go between the two, by this output: one, two alike, and on demand those with adapters. */
export function LeadTray({ plan, go }: Pick<AtPlan, "plan" | "go">) {
  const [more, setMore] = useState(false);
  return (
    <>
      <Leads plan={plan} go={go} patches={choicesOf(plan, plan.socket, "leads")} label="leads" />
      <details onToggle={({ currentTarget }) => setMore(currentTarget.open)}>
        <summary>with an adapter</summary>
        {more && (
          <Leads
            plan={plan}
            go={go}
            patches={choicesOf(plan, plan.socket, "adapters")}
            label="leads with an adapter"
          />
        )}
      </details>
    </>
  );
}

interface Props extends Pick<AtPlan, "plan" | "go"> {
  readonly patches: readonly Patch[];
  readonly label: string;
}

const Leads = ({ plan, go, patches, label }: Props) => (
  <Roving label={label} kind="picks leads">
    {patches.map((patch) => (
      <button
        key={patchName(patch)}
        type="button"
        class="pick"
        aria-pressed={patchName(patch) === patchName(plan.patch)}
        onClick={() => go((one) => withPatch(one, patch))}
      >
        <LeadPicture wires={patch.wires} />
        <span class="tape">{patchName(patch)}</span>
        <span class="note">{noteOf(patch)}</span>
      </button>
    ))}
  </Roving>
);

/** What a single lead is; several say it by their names. */
const noteOf = ({ wires: [one, ...more] }: Patch): string =>
  one === undefined || more.length > 0 ? "" : english.patching.kinds[one.kind].note;
