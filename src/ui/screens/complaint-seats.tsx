import { Point } from "#ui/parts/complaint-point.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { AtComplaint } from "./complaint-state.ts";
import type { Told } from "./complaint-told.ts";

const others: readonly NonNullable<Told["others"]>[] = ["none", "all", "don't know"];

/** Who says so, in a rig that is drawn. */
export const ComplaintSeat = ({ inHand, tell }: AtComplaint) => (
  <Roving label={useWords().complaint.questions.seat} kind="own-words">
    {inHand?.positions.map(({ id, name }) => (
      <button key={id} type="button" class="tape" onClick={() => tell({ seat: id })}>
        {name}
      </button>
    ))}
  </Roving>
);

/** Who else hears it so: it tells what is shared from what is one seat's own. */
export function ComplaintOthers({ tell }: AtComplaint) {
  const { complaint } = useWords();
  return (
    <>
      <p class="hint">{complaint.tells}</p>
      <Roving label={complaint.questions.others} kind="points counts">
        {others.map((who) => (
          <Point key={who} onPress={() => tell({ others: who })}>
            <span>{complaint.others[who]}</span>
          </Point>
        ))}
      </Roving>
    </>
  );
}
