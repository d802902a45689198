import type { Derived } from "#core/session/derive.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Pick<Held, "show">;
  /** Left out until it is worked out. */
  readonly derived: Derived | undefined;
  /** The position that was left by itself, since it is healthy. */
  readonly came: string | undefined;
}

/** What was just found healthy, said once the next position is there, and only as long as it is. */
export function CameFrom({ held, derived, came }: Props) {
  const { round } = useWords();
  const name = derived?.rig.positions.find(({ id }) => id === came)?.name;
  if (came === undefined || name === undefined || derived?.state(came) !== "healthy") return null;
  return (
    <p class="came" role="status">
      <Tick /> {round.cameFrom(name)}{" "}
      <button
        type="button"
        class="quiet"
        onClick={() => held.show({ screen: "position", position: came })}
      >
        {round.lookAgain}
      </button>
    </p>
  );
}
