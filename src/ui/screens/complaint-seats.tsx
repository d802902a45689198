import { Point } from "#ui/parts/complaint-point.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import type { AtComplaint } from "./complaint-state.ts";
import type { Told } from "./complaint-told.ts";

const others: readonly (readonly [NonNullable<Told["others"]>, string])[] = [
  ["none", "only this one"],
  ["all", "all of them"],
  ["don't know", "nobody asked yet"],
];

/** Who says so, in a rig that is drawn. */
export const ComplaintSeat = ({ inHand, tell }: AtComplaint) => (
  <Roving label="Who says so?" kind="own-words">
    {inHand?.positions.map(({ id, name }) => (
      <button key={id} type="button" class="tape" onClick={() => tell({ seat: id })}>
        {name}
      </button>
    ))}
  </Roving>
);

/** Who else hears it so: it tells what is shared from what is one seat's own. */
export const ComplaintOthers = ({ tell }: AtComplaint) => (
  <>
    <p class="hint">It tells what all share from what is this seat's own.</p>
    <Roving label="Does anybody else hear it so?" kind="points counts">
      {others.map(([who, words]) => (
        <Point key={who} onPress={() => tell({ others: who })}>
          <span>{words}</span>
        </Point>
      ))}
    </Roving>
  </>
);
