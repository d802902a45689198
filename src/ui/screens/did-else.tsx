import { useState } from "preact/hooks";
import { type Hands, handsAt } from "#core/diagnosis/hands.ts";
import type { Model } from "#core/diagnosis/model.ts";
import { doText } from "#core/report/do-text.ts";
import { placeName } from "#core/report/names.ts";
import { build } from "#core/rig/rig.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { AtPosition } from "./position-screen.tsx";

/** What somebody did that nothing here asked for: point at the thing, then at what was done. */
export function DidElse({ held, ready: { derived }, position }: AtPosition) {
  const { language, doing } = useWords();
  const [part, setPart] = useState<string>();
  const { model, evidence } = derived;
  const { era } = evidence;
  const rig = build(era.course.state.rig);
  const hands = handsAt(era, position);
  const chosen = hands.find((one) => one.part === part);
  if (hands.length === 0) return null;
  return (
    <details class="did-else">
      <summary>{doing.didElse}</summary>
      {chosen === undefined ? (
        <Roving label={doing.toWhat} kind="points boxes">
          {hands.map((one) => (
            <Point key={one.part} onPress={() => setPart(one.part)}>
              <KindPicture kind={rig.part(one.part).kind} />
              <span>{placeName(language, rig, one.part)}</span>
            </Point>
          ))}
        </Roving>
      ) : (
        <Done {...{ held, chosen, model }} onBack={() => setPart(undefined)} />
      )}
    </details>
  );
}

interface Props extends Pick<AtPosition, "held"> {
  readonly chosen: Hands;
  readonly model: Model;
  readonly onBack: () => void;
}

/** The closed list of what may have been done to one thing. A hand was on the gear: sound comes back lower. */
function Done({ held, chosen, model, onBack }: Props) {
  const { language, doing } = useWords();
  return (
    <>
      <ul class="sights">
        {chosen.moves.map((move) => (
          <li key={JSON.stringify(move)}>
            <button
              type="button"
              class="sight"
              onClick={() => {
                held.edges.player.handOn();
                held.enter({ entry: "move", move });
              }}
            >
              {doText(language, model, move)}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="quiet" onClick={onBack}>
        {doing.somethingElse}
      </button>
    </>
  );
}
