import { bounds, type FigureName, ohmsOf, outputOhms, type Usual } from "#core/level/figures.ts";
import { type SensitivityUnit, sensitivityUnits } from "#core/level/sensitivity.ts";
import type { Stage } from "#core/level/stages.ts";
import { settingFor } from "#core/level/told.ts";
import { peakSetting } from "#core/level/tone-change.ts";
import { type Typed, typedFigure, typedOhms } from "#core/level/typed.ts";
import { catalogue } from "#core/parts/catalogue.ts";
import type { Settings } from "#core/parts/kind.ts";
import { placeName } from "#core/report/names.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { SensitivityDoubted } from "./levels-doubt.tsx";
import { NumberTyped } from "./levels-number.tsx";
import type { AtLevels } from "./use-levels.ts";

interface AtPart {
  readonly at: AtLevels;
  readonly part: string;
}

/** The numbers of the box that was tapped, each with what is usual; none of them need be known. */
export function LevelsNumbers({ at }: { readonly at: AtLevels }) {
  const { levels, levelNumbers, language, rig } = useWords();
  const { open: part, refused } = at.view;
  if (part === undefined) return null;
  const stage = at.way.feed.stages.find((one) => one.part === part);
  const isWorn = at.way.feed.worn.part === part;
  if (stage === undefined && !isWorn) return null;
  return (
    <section class="level-numbers" aria-label={levels.numbersOf(placeName(language, at.rig, part))}>
      <p class="head">
        <Tape>{language.names.alone(part)}</Tape>
        <button
          type="button"
          class="quiet"
          onClick={() => at.look({ open: undefined, refused: undefined })}
        >
          {levelNumbers.close}
        </button>
      </p>
      <p class="note">{levelNumbers.typeWhatYouKnow}</p>
      <div class="fields">
        {stage && (
          <OfBox key={part} at={at} stage={stage} first={stage === at.way.feed.stages[0]} />
        )}
        {isWorn && <OfWorn key={part} at={at} part={part} />}
      </div>
      {refused && (
        <p class="refused" role="alert">
          {rig.refused(refused)}
        </p>
      )}
    </section>
  );
}

const ofBox = ["most volts", "gain", "input noise", "output noise", "most input volts"] as const;
/** What nothing comes before has neither. */
const needsFeed: readonly FigureName[] = ["gain", "most input volts"];

interface BoxProps {
  readonly at: AtLevels;
  readonly stage: Stage;
  readonly first: boolean;
}

function OfBox({ at, stage, first }: BoxProps) {
  const { levelNumbers: levels } = useWords();
  const { part, socket, shared, figures } = stage;
  const ohms = at.way.feed.worn.ohms;
  const settings = settingsOf({ at, part });
  return (
    <>
      {ofBox
        .filter((name) => !first || !needsFeed.includes(name))
        .map((name) => {
          const setting = settingFor(name, shared ? undefined : socket);
          return (
            <NumberTyped
              key={name}
              label={levels.figures[name]}
              hint={levels.hints[name]}
              unit={bounds[name].unit}
              value={told(settings, setting)}
              usual={figures[name].told ? undefined : figures[name]}
              least={bounds[name].least}
              most={bounds[name].most}
              read={(text) => typedFigure(name, text, ohms)}
              onSet={(typed) => at.put({ part, name: setting, value: typed?.value })}
            />
          );
        })}
      <OhmsOf at={at} part={part} name="output ohms" usual={outputOhms} />
    </>
  );
}

const settingsOf = ({ at, part }: AtPart): Settings | undefined =>
  at.rig.parts.find(({ id }) => id === part)?.settings;

const told = (settings: Settings | undefined, name: string): number | undefined => {
  const value = settings?.[name];
  return typeof value === "number" ? value : undefined;
};

interface OhmsProps extends AtPart {
  readonly name: "ohms" | "output ohms" | typeof peakSetting;
  readonly usual?: Usual | undefined;
}

/** A resistance that its kind knows. */
function OhmsOf({ at, part, name, usual }: OhmsProps) {
  const { levelNumbers: levels } = useWords();
  const { kind } = at.rig.part(part);
  const range = catalogue[kind].parameters[name === peakSetting ? "ohms" : name];
  if (range === undefined || !("unit" in range)) return null;
  const { least, most } = range;
  const value = told(settingsOf({ at, part }), name);
  const read = (text: string): Typed => typedOhms(text, least, most);
  return (
    <NumberTyped
      label={levels.figures[name]}
      hint={levels.hints[name]}
      unit="Ω"
      value={value}
      usual={value === undefined ? usual : undefined}
      least={least}
      most={most}
      read={read}
      onSet={(typed) => at.put({ part, name, value: typed?.value })}
    />
  );
}

function OfWorn({ at, part }: AtPart) {
  const { levelNumbers: levels } = useWords();
  const { worn } = at.way.feed;
  const { sensitivity, ohms } = worn;
  const { least, most } = bounds.sensitivity;
  const set = (value: number | undefined, unit: SensitivityUnit | undefined) =>
    at.put(
      { part, name: "sensitivity", value },
      { part, name: "sensitivity in", value: value === undefined ? undefined : unit },
    );
  return (
    <>
      <div>
        <NumberTyped
          label={levels.figures.sensitivity}
          hint={levels.hints.sensitivity}
          unit={sensitivity.told ? worn.unit : "dB/mW"}
          value={sensitivity.told ? sensitivity.typical : undefined}
          usual={sensitivity.told ? undefined : sensitivity}
          least={least}
          most={most}
          read={(text) => typedFigure("sensitivity", text, ohms)}
          onSet={(typed) => set(typed?.value, unitOf(typed, worn.unit, sensitivity.told))}
        />
        {sensitivity.told && (
          <Roving label={levels.ofWhat} kind="foot of-what">
            {sensitivityUnits.map((unit) => (
              <button
                key={unit}
                type="button"
                class="say"
                aria-pressed={unit === worn.unit}
                onClick={() => set(sensitivity.typical, unit)}
              >
                {levels.units[unit]}
              </button>
            ))}
          </Roving>
        )}
        <SensitivityDoubted worn={worn} />
      </div>
      <OhmsOf at={at} part={part} name="ohms" usual={ohmsOf(at.rig.part(part).kind)} />
      <OhmsOf at={at} part={part} name={peakSetting} />
    </>
  );
}

/** A number typed anew without its unit keeps the one that was said. */
const unitOf = (
  typed: Typed | undefined,
  now: SensitivityUnit,
  wasTold: boolean,
): SensitivityUnit | undefined => {
  if (typed === undefined || !("value" in typed)) return undefined;
  return typed.unit === "dB" && wasTold ? now : typed.unit;
};
