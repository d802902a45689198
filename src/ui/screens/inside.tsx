import { Board } from "./board.tsx";
import { Curtain } from "./curtain.tsx";
import { PlanScreen } from "./plan-screen.tsx";
import { PositionScreen } from "./position-screen.tsx";
import type { Held } from "./use-page.ts";
import { useSession } from "./use-session.ts";

/** Everything behind the first screen. */
export function Inside({ held }: { readonly held: Held }) {
  const { view } = held.page;
  return view.screen === "plan" ? (
    <PlanScreen held={held} plan={view.plan} />
  ) : (
    <InSession held={held} />
  );
}

/** What follows from the log. */
function InSession({ held }: { readonly held: Held }) {
  const session = useSession(held);
  const { page, ready } = session;
  switch (page.view.screen) {
    case "start":
    case "plan":
      return null;
    case "board":
      return <Board held={session} />;
    case "position":
      return ready ? (
        <PositionScreen held={session} ready={ready} position={page.view.position} />
      ) : null;
    case "curtain":
      return ready?.bench ? (
        <Curtain held={session} derived={ready.derived} bench={ready.bench} />
      ) : null;
  }
}
