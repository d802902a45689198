import { useEffect, useState } from "preact/hooks";
import { Board } from "./board.tsx";
import { ComplaintScreen } from "./complaint.tsx";
import { Curtain } from "./curtain.tsx";
import { HandsUp } from "./hands-up.tsx";
import { Listen } from "./listen.tsx";
import type { Plan } from "./plan.ts";
import { rigFor } from "./plan-foresee.ts";
import { PlanScreen } from "./plan-screen.tsx";
import { PositionScreen } from "./position-screen.tsx";
import { ProveChoice } from "./prove-choice.tsx";
import { ProveWork } from "./prove-work.tsx";
import { SoundOut } from "./sound-out.tsx";
import { Sounds } from "./sounds.tsx";
import { Training } from "./training.tsx";
import type { Held } from "./use-page.ts";
import { useSession } from "./use-session.ts";

/** Everything behind the first screen. */
export function Inside({ held }: { readonly held: Held }) {
  const { view } = held.page;
  switch (view.screen) {
    case "plan":
      return <PlanScreen held={held} plan={view.plan} hear={hearPlan(held)} />;
    case "listen":
      return <Listen held={held} view={view} />;
    case "training":
      return <Training held={held} />;
    case "sound out":
      return <SoundOut held={held} />;
    case "sounds":
      return <Sounds held={held} />;
    case "flex":
    case "measure":
      return <Measuring held={held} />;
    case "complaint":
      return <ComplaintScreen held={held} told={view.told} />;
    case "prove":
      return view.lead.by === undefined ? (
        <ProveChoice held={held} lead={view.lead} />
      ) : (
        <InSession held={held} />
      );
    default:
      return <InSession held={held} />;
  }
}

/** The screens that measure are fetched when one of them is wanted. */
function Measuring({ held }: { readonly held: Held }) {
  const [screens, setScreens] = useState<typeof import("./measuring-screens.tsx")>();
  const { change } = held;
  useEffect(() => {
    import("./measuring-screens.tsx").then(setScreens, () =>
      change((one) => ({ ...one, notice: "not loaded" })),
    );
  }, [change]);
  return screens ? <screens.MeasuringScreens held={held} /> : null;
}

const hearPlan =
  ({ show }: Held) =>
  (plan: Plan) => {
    const rig = rigFor(plan);
    if (rig !== undefined) show({ screen: "listen", rig, plan });
  };

/** What follows from the log. */
function InSession({ held }: { readonly held: Held }) {
  const session = useSession(held);
  const { page, ready } = session;
  switch (page.view.screen) {
    case "start":
    case "plan":
    case "listen":
    case "training":
    case "complaint":
    case "sound out":
    case "sounds":
    case "flex":
    case "measure":
      return null;
    case "board":
      return <Board held={session} />;
    case "position":
      return ready ? (
        <PositionScreen held={session} ready={ready} position={page.view.position} />
      ) : null;
    case "prove":
      return ready ? <ProveWork held={session} ready={ready} /> : null;
    case "hands up":
      return ready ? <HandsUp held={session} ready={ready} /> : null;
    case "curtain":
      return ready?.bench ? (
        <Curtain held={session} derived={ready.derived} bench={ready.bench} />
      ) : null;
  }
}
