import { downOf } from "#core/level/advice.ts";
import type { Place } from "#core/level/at-ears.ts";
import { heardFrom, heardIn, loudnessOf } from "#core/level/heard.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { knobSetting } from "#core/level/told.ts";
import { toDbu } from "#core/level/volts.ts";
import { placeName } from "#core/report/names.ts";
import { type DiagramSaid, LevelDiagram } from "#ui/parts/level-diagram.tsx";
import { diagramOf } from "#ui/parts/level-diagram-shape.ts";
import { LevelKnob } from "#ui/parts/level-knob.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { usualRoom } from "./levels-view.ts";
import type { AtLevels } from "./use-levels.ts";

/** The chain from its source to the ears: the diagram, and under each box its knob. */
export function LevelsChain({ at }: { readonly at: AtLevels }) {
  const words = useWords();
  const across = useWide(60);
  const { way, told, view, targets } = at;
  const diagram = diagramOf(way.feed, told, usualProgramme);
  return (
    <div
      class={across ? "level-diagram across" : "level-diagram down"}
      style={{ "--columns": diagram.columns }}
    >
      <LevelDiagram
        diagram={diagram}
        across={across}
        level={told.level}
        hiss={told.hiss}
        room={view.room ?? usualRoom}
        said={saidIn(words, at, diagram.cut?.by)}
      />
      <ol aria-label={words.levels.chain}>
        {way.feed.stages.map(({ part }, stage) => (
          <li key={part}>
            <Box at={at} part={part} />
            <Knob at={at} stage={stage} target={targets.knobs[stage]} />
            <Along at={at} part={part} />
          </li>
        ))}
        <li>
          <Box at={at} part={way.feed.worn.part} />
          <p class="hidden">{earWords(words, at)}</p>
        </li>
      </ol>
    </div>
  );
}

/** What the drawing says beside its lines. */
function saidIn(words: Words, { told, view }: AtLevels, cut: number | undefined): DiagramSaid {
  const { levels, figures } = words;
  const outputs = told.now.places.filter(({ at }) => at === "output");
  const room = view.room ?? usualRoom;
  return {
    ...levels.lines,
    cut: cut === undefined ? undefined : levels.cut(figures.fixed(cut, 0)),
    levels: outputs.map(({ signal, noise }) => ({
      level: figures.fixed(toDbu(signal), 0),
      noise: figures.fixed(toDbu(noise), 0),
    })),
    loud: levels.loud[loudnessOf(told.level.value)],
    hiss: told.hiss.value > heardFrom(room) ? levels.hissHeard : levels.hissUnheard,
    covered: levels.coveredIn[room],
  };
}

const earWords = ({ levels, figures }: Words, { told }: AtLevels): string => {
  const whole = (value: number) => figures.fixed(value, 0);
  return `${levels.headline[loudnessOf(told.level.value)](whole(told.level.value))}. ${levels.hissAt(whole(told.hiss.value))} ${levels.hissIs[heardIn(told.hiss.value) ?? "nowhere"]}`;
};

/** A box by its name; a press opens its numbers. */
function Box({ at, part }: { readonly at: AtLevels; readonly part: string }) {
  const { levels, language } = useWords();
  const open = at.view.open === part;
  const name = placeName(language, at.rig, part);
  return (
    <button
      type="button"
      class="tape"
      aria-expanded={open}
      aria-label={levels.numbersOf(name)}
      onClick={() => at.look({ open: open ? undefined : part, refused: undefined })}
    >
      {language.names.alone(part)}
    </button>
  );
}

interface KnobProps {
  readonly at: AtLevels;
  readonly stage: number;
  readonly target: number | undefined;
}

/** So near it counts as standing there. */
const near = 0.012;

function Knob({ at, stage, target }: KnobProps) {
  const { levels, figures, language } = useWords();
  const { rig, way, told } = at;
  const box = way.feed.stages[stage];
  if (box?.knob === undefined) return <p class="knob-said note">{levels.noKnob}</p>;
  const { part, socket, knob } = box;
  const settings = rig.parts.find(({ id }) => id === part)?.settings;
  const guessed = settings?.[knobSetting(socket)] === undefined;
  const tenths = (up: number) => figures.fixed(10 * up, 1);
  const down = figures.fixed(downOf(knob), 0);
  const aim = target !== undefined && Math.abs(target - knob) > near ? target : undefined;
  return (
    <div class="level-knob-of">
      <LevelKnob
        label={levels.knobOf(placeName(language, rig, part))}
        up={knob}
        said={levels.knobSays(tenths(knob), down, figures.fixed(told.level.value, 0))}
        target={aim}
        guessed={guessed}
        onTurn={(up) => at.turn(stage, up)}
        onLetGo={(up) => at.letGo(stage, up)}
      />
      <p class="knob-said" aria-hidden="true">
        {levels.knobAt(tenths(knob))}
        {aim !== undefined && <span class="aim"> {levels.knobTo(tenths(aim))}</span>}
        {guessed && <small>{levels.knobGuessed}</small>}
      </p>
    </div>
  );
}

/** The places of a box, for who does not see the drawing. */
function Along({ at, part }: { readonly at: AtLevels; readonly part: string }) {
  const { levels, figures } = useWords();
  const places = at.told.now.places.filter((place) => place.part === part);
  const whole = (value: number) => figures.fixed(value, 0);
  const said = ({ at: where, signal, noise, headroom }: Place) =>
    levels.place[where](whole(toDbu(signal)), whole(toDbu(noise)), whole(headroom));
  return <p class="hidden">{places.map(said).join(" ")}</p>;
}
