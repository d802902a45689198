import { useEffect, useState } from "preact/hooks";
import { useKeys } from "#ui/parts/keys.ts";
import { fetchWords } from "#ui/words/fetched.ts";
import { firstWords } from "#ui/words/first-words.ts";
import { FirstWordsContext, type Words, WordsContext } from "#ui/words/use-words.ts";
import { Frame } from "./frame.tsx";
import { Start } from "./start.tsx";
import { useBackButton } from "./use-back-button.ts";
import { type Edges, type Held, usePage } from "./use-page.ts";

/** The whole page: one screen of it at a time. */
export function App(edges: Edges) {
  const held = usePage(edges);
  const { settings, view } = held.page;
  useKeys(held.silence);
  useBackButton(held);
  const behind = useBehind(held);
  return (
    <FirstWordsContext.Provider value={firstWords[settings.tongue]}>
      <Frame held={held} behind={behind?.words}>
        {view.screen === "start" && <Start held={held} />}
        {view.screen !== "start" && behind && (
          <WordsContext.Provider value={behind.words}>
            <behind.Inside held={held} />
          </WordsContext.Provider>
        )}
      </Frame>
    </FirstWordsContext.Provider>
  );
}

interface Behind {
  readonly tongue: string;
  readonly words: Words;
  readonly Inside: typeof import("./inside.tsx").Inside;
}

/** What lies behind the first screen is fetched once that one stands, and again on a press where it did not come. */
function useBehind({ page, change }: Held): Behind | undefined {
  const [behind, setBehind] = useState<Behind>();
  const { tongue } = page.settings;
  const wanted = behind?.tongue !== tongue;
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change of view tries again
  useEffect(() => {
    if (!wanted) return;
    Promise.all([import("./inside.tsx"), fetchWords[tongue]()]).then(
      ([{ Inside }, words]) => setBehind({ tongue, words, Inside }),
      () => change((one) => ({ ...one, notice: "not loaded" })),
    );
  }, [wanted, page.view, tongue, change]);
  return behind;
}
