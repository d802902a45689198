import { useEffect, useState } from "preact/hooks";
import { useKeys } from "#ui/parts/keys.ts";
import { Frame } from "./frame.tsx";
import { Start } from "./start.tsx";
import { type Edges, type Held, usePage } from "./use-page.ts";

/** The whole page: one screen of it at a time. */
export function App(edges: Edges) {
  const held = usePage(edges);
  useKeys(held.silence);
  const Inside = useInside(held);
  return (
    <Frame held={held}>
      {held.page.view.screen === "start" && <Start held={held} />}
      {held.page.view.screen !== "start" && Inside && <Inside held={held} />}
    </Frame>
  );
}

type InsideScreens = typeof import("./inside.tsx").Inside;

/** What lies behind the first screen is fetched once that one stands, and again on a press where it did not come. */
function useInside({ page, change }: Held): InsideScreens | undefined {
  const [inside, setInside] = useState<{ readonly Inside: InsideScreens }>();
  const wanted = inside === undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of view tries again
  useEffect(() => {
    if (!wanted) return;
    import("./inside.tsx").then(setInside, () =>
      change((one) => ({ ...one, notice: "not loaded" })),
    );
  }, [wanted, page.view, change]);
  return inside?.Inside;
}
