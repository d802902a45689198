import { useState } from "preact/hooks";
import type { Patch } from "#core/patching/patch.ts";
import { choicesOf } from "#core/patching/patches.ts";
import { LeadPicture } from "#ui/parts/lead-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { withPatch } from "./plan.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { patchName } from "./plan-words.ts";

/** Leads that go between the two, by this output: one, two alike, and on demand those with adapters. */
export function LeadTray({ plan, go }: Pick<AtPlan, "plan" | "go">) {
  const { leads, adapters } = useWords().plan;
  const [more, setMore] = useState(false);
  return (
    <>
      <Leads plan={plan} go={go} patches={choicesOf(plan, plan.socket, "leads")} label={leads} />
      <details onToggle={({ currentTarget }) => setMore(currentTarget.open)}>
        <summary>{adapters.summary}</summary>
        {more && (
          <Leads
            plan={plan}
            go={go}
            patches={choicesOf(plan, plan.socket, "adapters")}
            label={adapters.label}
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

function Leads({ plan, go, patches, label }: Props) {
  const words = useWords();
  const now = patchName(words, plan.patch);
  return (
    <Roving label={label} kind="picks leads">
      {patches.map((patch) => {
        const name = patchName(words, patch);
        return (
          <button
            key={name}
            type="button"
            class="pick"
            aria-pressed={name === now}
            onClick={() => go((one) => withPatch(one, patch))}
          >
            <LeadPicture wires={patch.wires} />
            <span class="tape">{name}</span>
            <span class="note">{noteOf(words, patch)}</span>
          </button>
        );
      })}
    </Roving>
  );
}

/** What a single lead is; several say it by their names. */
const noteOf = ({ language }: Words, { wires: [one, ...more] }: Patch): string =>
  one === undefined || more.length > 0 ? "" : language.patching.kinds[one.kind].note;
