import { Board } from "./board.tsx";
import { Curtain } from "./curtain.tsx";
import { PositionScreen } from "./position-screen.tsx";
import type { Held } from "./use-page.ts";
import { useSession } from "./use-session.ts";

/** Everything behind the first screen. */
export function Inside({ held }: { readonly held: Held }) {
  const session = useSession(held);
  const { page, ready } = session;
  switch (page.view.screen) {
    case "start":
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
