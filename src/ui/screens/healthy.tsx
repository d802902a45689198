import { Tick } from "#ui/parts/marks.tsx";
import { seatName } from "#ui/parts/names.ts";
import { inHundred } from "#ui/parts/phrases.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { Heading } from "./frame.tsx";
import { NotTested } from "./not-tested.tsx";
import type { AtPosition } from "./position-screen.tsx";
import { nextSeat, seatsOf } from "./seat-state.ts";
import { WayPicture } from "./way-picture.tsx";

/** A position that is as it should be, what was not tested, and the way on. */
export function Healthy({ held: { show }, ready: { derived }, position }: AtPosition) {
  const { rig } = derived.model;
  const next = nextSeat(seatsOf(derived));
  return (
    <section class="healthy">
      <Tape>{seatName(rig, position)}</Tape>
      <Heading>
        <Tick /> Healthy
      </Heading>
      <p class="sure">
        {`Nothing found by these checks: left in the left ear, right in the right, the middle in the middle. Trouble is still possible: ${inHundred(derived.standing(position).trouble)}.`}
      </p>
      <WayPicture rig={rig} position={position} />
      <div class="columns">
        <div class="next-move">
          <button
            type="button"
            class="main"
            onClick={() =>
              show(next ? { screen: "position", position: next.id } : { screen: "board" })
            }
          >
            {next ? `On to ${next.name}` : "To the board"}
          </button>
        </div>
        <div class="beside">
          <NotTested derived={derived} position={position} />
        </div>
      </div>
    </section>
  );
}
