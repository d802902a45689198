import { wornOf } from "#core/level/figures.ts";
import type { Rig } from "#core/rig/rig.ts";
import { rigIn } from "#core/session/log.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  /** The one in hand; left out, the first where somebody listens. */
  readonly position?: string;
}

/** The way to how loud it is at a position. An instrument has no ears, and a rig to try hides its fault: its drawing stays as it is. */
export function ToLevels({ held: { page, show }, position }: Props) {
  const { levels } = useWords();
  const rig = rigIn(page.log);
  const there = rig?.positions.find(
    ({ id, wears }) => (position ?? id) === id && isWorn(rig.parts, wears),
  );
  if (page.seed !== undefined || there === undefined) return null;
  return (
    <button
      type="button"
      class="quiet"
      onClick={() => show({ screen: "levels", position: there.id, from: page.view })}
    >
      {levels.link}
    </button>
  );
}

/** Whether it is something that sounds at ears. */
export const isWorn = (parts: Rig["parts"], wears: string): boolean => {
  const worn = parts.find(({ id }) => id === wears);
  return worn !== undefined && wornOf(worn.kind) !== undefined;
};
