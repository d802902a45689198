import { type Looks, SeatHead } from "./seat-head.tsx";
import { Tape } from "./tape.tsx";
import { useWide } from "./use-wide.ts";

/** Somebody at the table. */
interface Sitting {
  readonly id: string;
  readonly name: string;
  /** Where they point, one place for each sound in the order they came. */
  readonly points: readonly string[];
  /** The same in words, for whoever does not see the drawing; left out where it goes without saying. */
  readonly pointed?: string | undefined;
  readonly differs: boolean;
}

interface Props {
  readonly label: string;
  /** Said of whoever differs. */
  readonly elsewhere: string;
  readonly seats: readonly Sitting[];
  readonly onTap: (id: string) => void;
}

/** More than these do not fit along a wide table. */
const mostAlong = 14;

/** A table from above with everybody at it: along its two long sides, across the screen or down it. Tap whoever differs. */
export function Table({ label, elsewhere, seats, onTap }: Props) {
  const across = useWide(62) && seats.length <= mostAlong;
  const half = Math.ceil(seats.length / 2);
  const sides: readonly (readonly [Looks, readonly Sitting[]])[] = [
    [across ? "down" : "right", seats.slice(0, half)],
    [across ? "up" : "left", seats.slice(half)],
  ];
  return (
    <fieldset class={across ? "table across" : "table"} aria-label={label}>
      {sides.map(([looks, some]) => (
        <div key={looks} class={`side ${looks}`}>
          {some.map((one) => (
            <button
              key={one.id}
              type="button"
              class="sitting"
              aria-pressed={one.differs}
              onClick={() => onTap(one.id)}
            >
              <span class={one.points.length > 1 ? "heads both" : "heads"}>
                {(one.points.length === 0 ? [""] : one.points).map((heard, at) => (
                  <SeatHead key={at === 0 ? "first" : "second"} looks={looks} heard={heard} />
                ))}
              </span>
              <Tape yellow={one.differs}>{one.name}</Tape>
              {one.pointed && <span class="hidden">, {one.pointed}</span>}
              <small>{one.differs ? elsewhere : ""}</small>
            </button>
          ))}
        </div>
      ))}
    </fieldset>
  );
}
