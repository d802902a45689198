import type { Room } from "#core/level/audible.ts";
import { heardFrom } from "#core/level/heard.ts";
import type { Between } from "#core/level/spread.ts";
import type { Decibels } from "#core/units/units.ts";
import {
  type At,
  bandOf,
  ceilingOf,
  type Diagram,
  earAt,
  lineOf,
  placing,
  roughOf,
} from "./level-diagram-shape.ts";

/** What stands in the drawing, in words. */
export interface DiagramSaid {
  readonly programme: string;
  readonly peaks: string;
  readonly noise: string;
  readonly ceiling: string;
  readonly cut: string | undefined;
  /** Levels at the outputs, in order. */
  readonly levels: readonly { readonly level: string; readonly noise: string }[];
  readonly loud: string;
  readonly hiss: string;
  readonly covered: string;
  /** The scales' own names: along the chain, and at the ear. */
  readonly volts: string;
  readonly pressure: string;
}

interface Props {
  readonly diagram: Diagram;
  readonly across: boolean;
  readonly level: Between;
  readonly hiss: Between;
  readonly room: Room;
  readonly said: DiagramSaid;
}

/** Level, noise and headroom along the way to a pair of ears: the programme with its peaks over it, the noise, the ceilings, and what the ear gets. */
export function LevelDiagram({ diagram, across, level, hiss, room, said }: Props) {
  const at = placing(diagram.span, across);
  const { spots, columns } = diagram;
  const ear = (columns - 1) / columns;
  return (
    <div class={across ? "level-plot across" : "level-plot down"} aria-hidden="true">
      <svg viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        <Covered at={at} from={ear} span={diagram.span} room={room} />
        <path
          class="peaks"
          d={bandOf(
            at,
            spots,
            (one) => one.peaks,
            (one) => one.level,
          )}
        />
        <path
          class="missing"
          d={bandOf(
            at,
            spots,
            (one) => one.whole,
            (one) => one.peaks,
          )}
        />
        <path class="peak-line" d={lineOf(at, spots, (one) => one.peaks)} />
        <path class="programme" d={lineOf(at, spots, (one) => one.level)} />
        <path class="noise" d={roughOf(at, spots)} />
        {diagram.ceilings.map((one) => (
          <path
            key={one.along}
            class={one.cut ? "ceiling cut" : "ceiling"}
            d={ceilingOf(at, one, columns)}
          />
        ))}
      </svg>
      <Soft at={at} from={ear} columns={columns} between={level} across={across} />
      <Soft at={at} from={ear} columns={columns} between={hiss} across={across} />
      <Names at={at} diagram={diagram} said={said} />
      <Scales at={at} across={across} said={said} />
      <Ear at={at} diagram={diagram} hiss={hiss} said={said} />
    </div>
  );
}

/** Beyond either end of the scale. */
const beyond: Decibels = 1000;

const placed = ([x, y]: readonly [number, number]) => ({ left: `${x}%`, top: `${y}%` });

interface CoveredProps {
  readonly at: At;
  readonly from: number;
  readonly span: Diagram["span"];
  readonly room: Room;
}

/** What no ear finds: under the threshold of hearing, and under what the room covers. */
function Covered({ at, from, span: [low], room }: CoveredProps) {
  const area = (to: Decibels) => {
    const corners = [at(from, low), at(1, low), at(1, to), at(from, to)];
    return `M${corners.map(([x, y]) => `${x} ${y}`).join("L")}Z`;
  };
  const [[x1, y1], [x2, y2]] = [
    at(from, heardFrom("silent") - earAt),
    at(1, heardFrom("silent") - earAt),
  ];
  return (
    <>
      <path class="covered" d={area(heardFrom(room) - earAt)} />
      <path class="threshold" d={`M${x1} ${y1}L${x2} ${y2}`} />
    </>
  );
}

interface SoftProps {
  readonly at: At;
  readonly from: number;
  readonly columns: number;
  readonly between: Between;
  readonly across: boolean;
}

/** Between what it may lie, fading out to where it hardly does. */
function Soft({ at, from, columns, between: { low, high }, across }: SoftProps) {
  const [one, other] = [
    at(from + 0.36 / columns, low - earAt),
    at(from + 0.64 / columns, high - earAt),
  ];
  const box = {
    left: `${Math.min(one[0], other[0])}%`,
    top: `${Math.min(one[1], other[1])}%`,
    width: `${Math.abs(other[0] - one[0])}%`,
    height: `${Math.abs(other[1] - one[1])}%`,
  };
  return <i class={across ? "soft" : "soft lying"} style={box} />;
}

interface SaidProps {
  readonly at: At;
  readonly diagram: Diagram;
  readonly said: DiagramSaid;
}

/** What each line is, said once where it begins; its level at each output; and where peaks are cut. */
function Names({ at, diagram: { spots, ceilings, cut }, said }: SaidProps) {
  const [first] = spots;
  const outputs = spots.filter((_, index) => index % 2 === 1).slice(0, said.levels.length);
  return (
    <>
      {first && (
        <>
          <span class="is programme" style={placed(at(first.along, first.level))}>
            {said.programme}
          </span>
          <span class="is peaks" style={placed(at(first.along, first.peaks))}>
            {said.peaks}
          </span>
          <span class="is noise" style={placed(at(first.along, first.noise))}>
            {said.noise}
          </span>
        </>
      )}
      {ceilings[0] && (
        <span class="is ceiling" style={placed(at(ceilings[0].along, ceilings[0].most))}>
          {said.ceiling}
        </span>
      )}
      {outputs.map((spot, index) => (
        <span key={spot.along}>
          <span class="value level" style={placed(at(spot.along, spot.level))}>
            {said.levels[index]?.level}
          </span>
          <span class="value noise" style={placed(at(spot.along, spot.noise))}>
            {said.levels[index]?.noise}
          </span>
        </span>
      ))}
      {cut && said.cut !== undefined && (
        <span class="tape yellow cut" style={placed(at(cut.along, cut.most))}>
          {said.cut}
        </span>
      )}
    </>
  );
}

/** Round numbers of both scales. */
const rounds = {
  volts: [-100, -80, -60, -40, -20, 0, 20],
  pressure: [0, 20, 40, 60, 80, 100, 120],
} as const;

interface ScalesProps extends Pick<SaidProps, "at" | "said"> {
  readonly across: boolean;
}

function Scales({ at, across, said }: ScalesProps) {
  const marks = (scale: "volts" | "pressure", along: number, shift: Decibels) => (
    <>
      {rounds[scale]
        .filter((_, index) => across || index % 2 === 0)
        .map((round) => (
          <span key={round} class={`mark ${scale}`} style={placed(at(along, round - shift))}>
            {String(round).replace("-", "−")}
          </span>
        ))}
      <span class={`mark unit ${scale}`} style={placed(at(along, across ? beyond : -beyond))}>
        {said[scale]}
      </span>
    </>
  );
  return (
    <>
      {marks("volts", 0, 0)}
      {marks("pressure", 1, earAt)}
    </>
  );
}

interface EarProps extends SaidProps {
  readonly hiss: Between;
}

/** How loud that is, and whether the hiss is heard. */
function Ear({ at, diagram: { columns, spots }, hiss, said }: EarProps) {
  const middle = (columns - 0.5) / columns;
  const loudest = spots.at(-1)?.peaks ?? 0;
  return (
    <>
      <span class="ear-says loud" style={placed(at(middle, loudest))}>
        {said.loud}
      </span>
      <span class="ear-says hiss" style={placed(at(middle, hiss.value - earAt))}>
        {said.hiss}
      </span>
      <span class="ear-says covered" style={placed(at(middle, -beyond))}>
        {said.covered}
      </span>
    </>
  );
}
