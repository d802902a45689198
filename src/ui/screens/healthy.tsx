import { useState } from "preact/hooks";
import { seatName } from "#core/report/names.ts";
import { inHundred } from "#core/report/phrases.ts";
import { asideAt } from "#core/rig/arranged.ts";
import type { Move } from "#core/rig/moves.ts";
import { build } from "#core/rig/rig.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { DoScreen } from "./do-screen.tsx";
import { Heading } from "./frame.tsx";
import { Aside, ItWas } from "./it-was.tsx";
import { NotTested } from "./not-tested.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { nextSeat, seatsOf } from "./seat-state.ts";
import { WayPicture } from "./way-picture.tsx";

/** A position that is as it should be, what was not tested, and the way on. */
export function Healthy(props: AtPosition) {
  const [back, setBack] = useState<Move>();
  const leave = () => setBack(undefined);
  return back === undefined ? (
    <Well {...props} onPutBack={(part) => setBack({ move: "put back", part })} />
  ) : (
    <DoScreen {...props} doing={{ move: back, cures: false }} onLeave={leave} />
  );
}

type Props = AtPosition & { readonly onPutBack: (part: string) => void };

function Well({ held: { show }, ready: { derived }, position, onPutBack }: Props) {
  const words = useWords();
  const { language, verdict } = words;
  const rig = build(derived.evidence.era.course.state.rig);
  const standing = derived.standing(position);
  const next = nextSeat(seatsOf(words, derived), derived);
  return (
    <section class="healthy">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>
        <Tick /> {verdict.healthy}
      </Heading>
      <p class="sure">{verdict.nothingFound(inHundred(language, standing.trouble))}</p>
      <ItWas model={derived.model} culprits={standing.culprits} />
      <WayPicture rig={rig} position={position} />
      <div class="columns">
        <div class="next-move">
          <Aside parts={asideAt(rig, position)} onPutBack={onPutBack} />
          <button
            type="button"
            class="main"
            onClick={() =>
              show(next ? { screen: "position", position: next.id } : { screen: "board" })
            }
          >
            {next ? verdict.onTo(next.name) : verdict.toBoard}
          </button>
        </div>
        <div class="beside">
          <NotTested derived={derived} position={position} />
        </div>
      </div>
    </section>
  );
}
