import { useKeys } from "#ui/parts/keys.ts";
import { Board } from "./board.tsx";
import { Curtain } from "./curtain.tsx";
import { Frame } from "./frame.tsx";
import { PositionScreen } from "./position-screen.tsx";
import { Start } from "./start.tsx";
import { type Edges, type Held, usePage } from "./use-page.ts";

/** The whole page: one screen of it at a time. */
export function App(edges: Edges) {
  const held = usePage(edges);
  useKeys(edges.player.silence);
  return (
    <Frame held={held}>
      <Screen held={held} />
    </Frame>
  );
}

function Screen({ held }: { readonly held: Held }) {
  const { view } = held.page;
  switch (view.screen) {
    case "start":
      return <Start held={held} />;
    case "board":
      return <Board held={held} />;
    case "position":
      return held.ready ? (
        <PositionScreen held={held} ready={held.ready} position={view.position} />
      ) : null;
    case "curtain":
      return held.ready?.bench ? (
        <Curtain held={held} derived={held.ready.derived} bench={held.ready.bench} />
      ) : null;
  }
}
