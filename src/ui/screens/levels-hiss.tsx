import { deepest, hissParts, underSixteenBits } from "#core/hearing/hiss.ts";
import { HissPicture } from "#ui/parts/hiss-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { OwnCautions } from "./cautions.tsx";
import { Level } from "./level.tsx";
import { mutedWords, PlaySign } from "./play.tsx";
import { useHiss } from "./use-hiss.ts";
import type { AtLevels } from "./use-levels.ts";
import { ownHeadphones, useArrive } from "./use-place.ts";

/** The predicted hiss at its true relation to the programme, to be heard: noise in place of a programme, then the hiss alone. */
export function LevelsHiss({ at }: { readonly at: AtLevels }) {
  const { levelsMore: levels, figures, sounding } = useWords();
  const { held, told } = at;
  const { world, page } = held;
  useArrive(held, ownHeadphones);
  const below = Math.round(told.level.value - told.hiss.value);
  const sound = useHiss(held, below);
  const apart = figures.fixed(below, 0);
  const tooSoft = !(below <= deepest);
  return (
    <details class="level-hiss">
      <summary>{levels.hear.question}</summary>
      <div class="hear-which">
        <HissPicture below={below} playing={world.playing} lasts={hissParts} />
        {!tooSoft && <HearButton held={held} sound={sound} />}
      </div>
      <p>{tooSoft ? levels.hear.tooSoft(apart) : levels.hear.what(apart)}</p>
      {!tooSoft && underSixteenBits(world.level, below) && (
        <p class="note">{levels.hear.underSixteen}</p>
      )}
      {sound.refused && (
        <p class="message" role="alert">
          {sounding.versions.refused}
        </p>
      )}
      {!page.sounded && <OwnCautions />}
      <Level held={held} />
      <p>
        <button
          type="button"
          class="quiet"
          onClick={() => held.show({ screen: "noise", position: at.position, noise: "hiss" })}
        >
          {levels.hear.byEar}
        </button>
      </p>
    </details>
  );
}

interface ButtonProps {
  readonly held: AtLevels["held"];
  readonly sound: ReturnType<typeof useHiss>;
}

/** Plays and ends it; once the volume may have been turned up, the press that says it is back down. */
function HearButton({ held: { world, edges }, sound }: ButtonProps) {
  const { levelsMore, sounding } = useWords();
  const { player } = edges;
  if (world.muted)
    return (
      <button type="button" class="play hands" onClick={player.handOff}>
        {mutedWords(sounding, world.turnedUp)}
      </button>
    );
  return (
    <button
      type="button"
      class="play"
      onClick={() => (world.playing ? player.silence() : sound.hear())}
    >
      <PlaySign />
      {world.playing || sound.making ? sounding.stop : levelsMore.hear.press}
    </button>
  );
}
