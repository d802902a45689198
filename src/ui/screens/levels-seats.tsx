import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { isWorn } from "./to-levels.tsx";
import type { AtLevels } from "./use-levels.ts";

/** The other positions of the rig, to see how loud it is there. */
export function LevelsSeats({ at: { rig, position, look } }: { readonly at: AtLevels }) {
  const { levelsMore: levels } = useWords();
  const seats = rig.positions.filter(({ wears }) => isWorn(rig.parts, wears));
  if (seats.length < 2) return null;
  return (
    <details>
      <summary>{levels.elsewhere}</summary>
      <Roving label={levels.elsewhere} kind="foot level-seats">
        {seats.map(({ id, name }) => (
          <button
            key={id}
            type="button"
            class="tape"
            aria-pressed={id === position}
            onClick={() => look({ position: id, open: undefined, refused: undefined })}
          >
            {name}
          </button>
        ))}
      </Roving>
    </details>
  );
}
