import type { Effect } from "#core/rig/effect.ts";
import type { CableLanes, MouthLane, StartLane } from "./cable-lanes.ts";
import type { Shown } from "./content.ts";
import { straightOn, sway } from "./direction.ts";
import { Junction } from "./junction.tsx";
import { Lane } from "./lane.tsx";
import type { PlanShape, Point } from "./plan-shape.ts";

interface Props {
  readonly shape: PlanShape;
  readonly lanes: CableLanes;
  /** What each ear gets, and what ties the lanes where they arrive. */
  readonly ears: readonly [Shown, Shown];
  readonly tie: Effect | undefined;
  /** Where the lane of a start comes out of its plug, and where that of a mouth goes in. */
  readonly startAt: (lane: StartLane) => Point;
  readonly mouthAt: (lane: MouthLane) => Point;
}

/** How far along the straight run the conductors have found their places. */
const settled = 0.62;
/** How long what ties the lanes is drawn. */
const tied = 66;

/** The conductors of a lead: what each carries, where they part, join, cross, end, or turn upside down. */
export function Cable({ shape, lanes, ears, tie, startAt, mouthAt }: Props) {
  const { at, length } = shape.middle;
  const end = tie === undefined ? length : length - tied;
  const after = ({ mouth, shown }: MouthLane) =>
    tie === undefined ? shown : ears[mouth.ears[0]?.ear === 1 ? 1 : 0];
  return (
    <g>
      {lanes.starts.map((lane) => (
        <g key={`${lane.start.socket} ${lane.start.contact}`}>
          <Lane carries={lane.shown.carries} d={shape.near(startAt(lane), lane.across)} />
          {lane.lost && <Lost shape={shape} lane={lane} />}
        </g>
      ))}
      {lanes.mouths.map((lane) => (
        <g key={keyOf(lane)}>
          <Out shape={shape} lane={lane} end={end} />
          <Lane carries={after(lane).carries} d={shape.far(mouthAt(lane), lane.across)} />
        </g>
      ))}
      {tie && (
        <Junction
          at={(along, across) => at(end + along, across)}
          length={tied}
          gap={Math.abs(lanes.mouths[0]?.across ?? 0)}
          effect={tie}
        />
      )}
      <Signs shape={shape} lanes={lanes} />
    </g>
  );
}

interface OutProps {
  readonly shape: PlanShape;
  readonly lane: MouthLane;
  readonly end: number;
}

/** One lane of the straight run, from those that it is made of. */
function Out({ shape: { middle }, lane, end }: OutProps) {
  const { at, length } = middle;
  const knee = length * settled;
  return (
    <>
      {lane.from.map((start) => (
        <Lane
          key={start.across}
          over={start.start.to.length < 2}
          carries={start.shown.carries}
          d={sway(at, [-1, start.across], [knee, lane.across])}
        />
      ))}
      <Lane
        carries={lane.shown.carries}
        d={straightOn(at, lane.from.length === 0 ? length * 0.4 : knee - 1, end + 1, lane.across)}
      />
      {lane.from.length > 1 && <circle class="knot" r="9" {...centre(at(knee, lane.across))} />}
    </>
  );
}

/** Where a lane is upside down from its start, and where one is taken away where it arrives. */
function Signs({ shape: { middle }, lanes }: Pick<Props, "shape" | "lanes">) {
  const { at, length } = middle;
  return (
    <>
      {lanes.starts.map(
        ({ shown, across }) =>
          shown.inverted && <Sign key={across} at={at(length * 0.1, across)} />,
      )}
      {lanes.mouths.map(
        ({ mouth, across }) =>
          mouth.ears.some(({ minus }) => minus) && (
            <Sign key={across} at={at(length * 0.95, across)} />
          ),
      )}
    </>
  );
}

const keyOf = ({ mouth }: MouthLane): string =>
  `${mouth.ears.map(({ ear }) => ear).join()} ${mouth.at?.socket} ${mouth.at?.contact}`;

const centre = (place: string): { readonly cx: number; readonly cy: number } => {
  const [cx = 0, cy = 0] = place.split(" ").map(Number);
  return { cx, cy };
};

/** A minus in a circle on a lane that is upside down, or is taken away where it arrives. */
const Sign = ({ at }: { readonly at: string }) => (
  <g transform={`translate(${at})`}>
    <circle class="knot open" r="10" />
    <path class="sign" d="M-5 0H5" />
  </g>
);

/** A lane that leaves and arrives nowhere: it ends between two bars. */
function Lost({
  shape: { middle },
  lane,
}: {
  readonly shape: PlanShape;
  readonly lane: StartLane;
}) {
  const { at, length } = middle;
  return (
    <>
      <Lane carries={lane.shown.carries} d={straightOn(at, 0, length * 0.14, lane.across)} />
      {[0.17, 0.24].map((part) => (
        <path
          key={part}
          class="bar"
          d={`M${at(length * part, lane.across - 9)} L${at(length * part, lane.across + 9)}`}
        />
      ))}
    </>
  );
}
