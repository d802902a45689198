import type { Socket } from "#core/parts/part.ts";
import { type Balancing, balancings, legsOf } from "#core/parts/stages.ts";
import { made, outputsOf } from "#core/patching/sockets-of.ts";
import { stageParameter } from "#core/patching/stages.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { RigPart } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import { carriedBy } from "#ui/parts/content.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { StagePicture } from "#ui/parts/stage-picture.tsx";
import { type Plan, withStage } from "./plan.ts";
import { type Outcome, outcomesOf } from "./plan-foresee.ts";
import type { AtPlan } from "./plan-stage.tsx";
import { nameOf } from "./plan-words.ts";

interface Props extends Pick<AtPlan, "plan" | "outcomes" | "go"> {
  /** Why it is asked. */
  readonly why?: string;
}

/** Which output stage is it? By its manual's words; or by what is heard of it plugged as drawn, which is what the stages are sorted by. */
export function StageChoice({ plan, outcomes, go, why = "" }: Props) {
  const groups = grouped(outcomes.length > 0 ? outcomes : outcomesOf(plan));
  const said = (stage: Balancing | undefined) => (event: Event) => {
    go((one) => withStage(one, stage));
    if (event.currentTarget instanceof Element)
      event.currentTarget.closest("section")?.focus({ preventScroll: true });
  };
  return (
    <div class="stage-choice">
      <h2 class="asks">{`What is inside the ${nameOf(plan.from)}?${why}`}</h2>
      <p class="note">
        Its manual says, near its data. Or plug it as drawn, volume down first, and listen.
      </p>
      {groups.map(({ effect, stages }) => (
        <div key={effect ?? "all"} class="stage-group">
          {effect && <p class="heard-as">{`You would hear: ${briefly(effect)}`}</p>}
          <Roving label={effect ? briefly(effect) : "output stages"} kind="picks">
            {stages.map((stage) => (
              <button
                key={stage}
                type="button"
                class="pick stage-pick"
                aria-pressed={plan.from.settings?.[stageParameter] === stage}
                onClick={said(stage)}
              >
                <StagePicture contacts={contactsFor(plan, stage)} />
                <span class="tape">{english.patching.stages[stage].name}</span>
                <span class="note">{stageWords(plan, stage)}</span>
              </button>
            ))}
          </Roving>
        </div>
      ))}
      <button type="button" class="say" aria-pressed={plan.stageUnknown} onClick={said(undefined)}>
        I do not know
      </button>
    </div>
  );
}

/** What is on its contacts, by the names they have on the socket in use, and what a manual writes. */
function stageWords(plan: Plan, stage: Balancing): string {
  const { carries, manual } = english.patching.stages[stage];
  const { hot, cold, screen } = legsOf[socketFor(plan, stage)?.kind === "XLR" ? "XLR" : "jack"];
  return `${carries(hot, cold, screen)}. The manual: ${manual}.`;
}

const briefly = (effect: Effect): string => english.effects[effect];

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
