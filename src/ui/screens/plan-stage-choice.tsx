import type { Socket } from "#core/parts/part.ts";
import { type Balancing, balancings, legsOf } from "#core/parts/stages.ts";
import { made, outputsOf } from "#core/patching/sockets-of.ts";
import { stageParameter } from "#core/patching/stages.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { carriedBy } from "#ui/parts/content.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { StagePicture } from "#ui/parts/stage-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { type Plan, withStage } from "./plan.ts";
import { type Outcome, outcomesOf } from "./plan-foresee.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { nameOf } from "./plan-words.ts";

interface Props extends Pick<AtPlan, "plan" | "outcomes" | "go"> {
  /** It is asked because it decides which lead is right. */
  readonly decides?: boolean;
}

/** Which output stage is it? By its manual's words; or by what is heard of it plugged as drawn, which is what the stages are sorted by. */
export function StageChoice({ plan, outcomes, go, decides = false }: Props) {
  const words = useWords();
  const { stage: texts } = words.plan;
  const groups = grouped(outcomes.length > 0 ? outcomes : outcomesOf(plan));
  const said = (stage: Balancing | undefined) => (event: Event) => {
    go((one) => withStage(one, stage));
    if (event.currentTarget instanceof Element)
      event.currentTarget.closest("section")?.focus({ preventScroll: true });
  };
  return (
    <div class="stage-choice">
      <h2 class="asks">{(decides ? texts.titleAndWhy : texts.title)(nameOf(words, plan.from))}</h2>
      <p class="note">{texts.where}</p>
      {groups.map((group) => (
        <Stages key={group.effect ?? "all"} plan={plan} group={group} said={said} />
      ))}
      <button type="button" class="say" aria-pressed={plan.stageUnknown} onClick={said(undefined)}>
        {texts.unknown}
      </button>
    </div>
  );
}

interface StagesProps {
  readonly plan: Plan;
  readonly group: StageGroup;
  readonly said: (stage: Balancing) => (event: Event) => void;
}

/** Stages that would be heard alike. */
function Stages({ plan, group: { effect, stages }, said }: StagesProps) {
  const words = useWords();
  const { heard, all } = words.plan.stage;
  const effects = effect && words.language.effects[effect];
  return (
    <div class="stage-group">
      {effects && <p class="heard-as">{heard(effects)}</p>}
      <Roving label={effects ?? all} kind="picks">
        {stages.map((stage) => (
          <button
            key={stage}
            type="button"
            class="pick stage-pick"
            aria-pressed={plan.from.settings?.[stageParameter] === stage}
            onClick={said(stage)}
          >
            <StagePicture contacts={contactsFor(plan, stage)} />
            <span class="tape">{words.language.patching.stages[stage].name}</span>
            <span class="note">{stageWords(words, plan, stage)}</span>
          </button>
        ))}
      </Roving>
    </div>
  );
}

/** What is on its contacts, by the names they have on the socket in use, and what a manual writes. */
function stageWords(words: Words, plan: Plan, stage: Balancing): string {
  const { carries, manual } = words.language.patching.stages[stage];
  const { contact } = words.marks;
  const { hot, cold, screen } = legsOf[socketFor(plan, stage)?.kind === "XLR" ? "XLR" : "jack"];
  return words.plan.stage.manual(carries(contact(hot), contact(cold), contact(screen)), manual);
}

interface StageGroup {
  readonly effect?: Effect;
  readonly stages: readonly Balancing[];
}

/** Stages by what would be heard of each, where that is different. */
function grouped(outcomes: readonly Outcome[]): readonly StageGroup[] {
  const effects = [...new Set(outcomes.map(({ prediction }) => prediction.effect))];
  if (effects.length < 2) return [{ stages: balancings }];
  return effects.map((effect) => {
    const here = outcomes
      .filter(({ prediction }) => prediction.effect === effect)
      .map(({ stage }) => stage);
    return { effect, stages: balancings.filter((stage) => here.includes(stage)) };
  });
}

/** The output in use, made with a stage; the first that the stage is behind of where that is none of these. */
function socketFor({ from, socket: name }: Plan, stage: Balancing): Socket | undefined {
  const circuits = balancings.map((one) => circuitsOf(from, one));
  const decided = (socket: string) => new Set(circuits.map((of) => of.get(socket))).size > 1;
  const sockets = outputsOf(withStageIn(from, stage)).filter((one) => decided(one.name));
  return sockets.find((one) => one.name === name) ?? sockets[0];
}

/** What is behind each output of a box with a stage, as text. */
const circuitsOf = (from: RigPart, stage: Balancing): ReadonlyMap<string, string> =>
  new Map(
    outputsOf(withStageIn(from, stage)).map(({ name, circuit }) => [name, JSON.stringify(circuit)]),
  );

const withStageIn = (from: RigPart, stage: Balancing): RigPart => ({
  ...from,
  settings: { ...from.settings, [stageParameter]: stage },
});

/** What stands on its contacts. */
function contactsFor(plan: Plan, stage: Balancing) {
  const socket = socketFor(plan, stage);
  return socket === undefined ? [] : carriedBy(made(withStageIn(plan.from, stage)), socket);
}
