import { useWords } from "#ui/words/use-words.ts";
import { FlexLive } from "./flex-live.tsx";
import { FlexResult } from "./flex-result.tsx";
import { Heading } from "./frame.tsx";
import { FindingLevel } from "./measure-level.tsx";
import { Prepare, useWays } from "./measure-prepare.tsx";
import { whyBefore } from "./measure-words.ts";
import { useFlex } from "./use-flex.ts";
import { type Instruments, useInstruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import { useWorld } from "./use-world.ts";

/** A lead is watched while it is bent: every moment at which something in it lets go. */
export function FlexScreen({ held }: { readonly held: Held }) {
  const { flex } = useWords();
  const instruments = useInstruments(held);
  return (
    <section class="measure flex">
      {instruments ? (
        <Flex held={held} instruments={instruments} />
      ) : (
        <Heading>{flex.title}</Heading>
      )}
    </section>
  );
}

interface Props {
  readonly held: Held;
  readonly instruments: Instruments;
}

function Flex({ held, instruments }: Props) {
  const words = useWords();
  const { before } = words.flex;
  const { measurer } = instruments;
  const { ways } = useWays(held);
  const world = useWorld(measurer);
  const bout = useFlex(held, measurer, ways);
  switch (bout.phase) {
    case "level":
      return <FindingLevel held={held} measurer={measurer} world={world} returns={ways.returns} />;
    case "watching":
      return <FlexLive held={held} bout={bout} measurer={measurer} world={world} />;
    case "over":
      return <FlexResult bout={bout} trouble={world.trouble} />;
    case "before":
      return (
        <Prepare
          held={held}
          instruments={instruments}
          title={before.title}
          hint={before.hint}
          trouble={whyBefore(words, world.trouble, bout.found)}
        >
          <div class="foot">
            <button type="button" class="main" onClick={() => bout.start(false)}>
              {before.start}
            </button>
            <button type="button" class="quiet" onClick={() => bout.start(true)}>
              {before.byHand}
            </button>
          </div>
        </Prepare>
      );
  }
}
