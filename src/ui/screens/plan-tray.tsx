import { useEffect, useRef } from "preact/hooks";
import type { PartKind } from "#core/parts/catalogue.ts";
import { balancings } from "#core/parts/stages.ts";
import { stageParameter, stagesOf } from "#core/patching/stages.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { closed, type Opened, type Plan, withFrom, withInto, withWorn } from "./plan.ts";
import { heardKinds, intoKinds, KindTray, sendingKinds } from "./plan-kinds.tsx";
import { LeadTray } from "./plan-leads.tsx";
import { PlanSettings } from "./plan-settings.tsx";
import type { AtPlan } from "./plan-stage.tsx";
import { StageChoice } from "./plan-stage-choice.tsx";

interface Props extends AtPlan {
  readonly open: Opened;
}

/** What may stand in a place of the picture, to choose from, and what the thing that stands there is made of. */
export function PlanTray(props: Props) {
  const { plan, go, open } = props;
  const words = useWords();
  const { tray: titles, putAway, outputStage } = words.plan;
  const tray = useFocusInside(open);
  return (
    <section class="tray" id="tray" tabIndex={-1} ref={tray} aria-label={titles[open]}>
      <p class="tray-head">
        <span>{titles[open]}</span>
        <button type="button" class="quiet" onClick={() => go(closed)}>
          {putAway}
        </button>
      </p>
      <Choices {...props} />
      {open === "from" && stagesOf(plan).length > 0 && (
        <details>
          <summary>{outputStage(stageName(words, plan))}</summary>
          <StageChoice {...props} />
        </details>
      )}
      {partsIn(plan, open).map((part) => (
        <PlanSettings key={part.id} part={part} go={go} />
      ))}
    </section>
  );
}

/** As it is called, or that nobody has said. */
function stageName({ language, plan }: Words, { from: { settings = {} } }: Plan): string {
  const said = balancings.find((stage) => stage === settings[stageParameter]);
  return said === undefined ? plan.stageNotSaid : language.patching.stages[said].name;
}

function Choices({ plan, go, open }: Props) {
  const choose = (how: (plan: Plan, kind: PartKind) => Plan) => (kind: PartKind) =>
    go((one) => closed(how(one, kind)));
  switch (open) {
    case "from":
      return <KindTray groups={sendingKinds} now={plan.from.kind} onChoose={choose(withFrom)} />;
    case "into":
      return <KindTray groups={intoKinds} now={plan.into.kind} onChoose={choose(withInto)} />;
    case "worn":
      return (
        <KindTray
          groups={heardKinds}
          now={plan.worn?.kind ?? "headphones"}
          onChoose={choose(withWorn)}
        />
      );
    case "wires":
      return <LeadTray plan={plan} go={go} />;
  }
}

function partsIn({ from, into, worn, patch }: Plan, open: Opened): readonly RigPart[] {
  if (open === "wires") return patch.wires;
  const part = { from, into, worn }[open];
  return part === undefined ? [] : [part];
}

/** The focus goes to what stands there now when a tray comes, and back to the tape that opened it. */
function useFocusInside(open: Opened) {
  const tray = useRef<HTMLElement>(null);
  useEffect(() => {
    const find = (which: string) => tray.current?.querySelector<HTMLElement>(which);
    (find("[aria-pressed='true']") ?? find("button"))?.focus({ preventScroll: true });
    tray.current?.scrollIntoView({ block: "nearest" });
    return () => document.querySelector<HTMLElement>(`.name.${open}`)?.focus();
  }, [open]);
  return tray;
}
