import { instrumentAt } from "#core/rig/rig.ts";
import { noisesAt, rigNow } from "#core/session/noises.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { AtPosition } from "./position-screen.tsx";

/** The way to where a noise comes in; a simulated rig has none. */
export function NoiseLink({ held, ready: { derived, bench }, position }: AtPosition) {
  const { noises } = useWords();
  if (bench || instrumentAt(rigNow(derived), position) !== undefined) return null;
  const spoken = noisesAt(derived, position);
  return (
    <p class="noise-link">
      {spoken.map((noise) => (
        <button
          key={noise}
          type="button"
          class="quiet"
          onClick={() => held.show({ screen: "noise", position, noise })}
        >
          {noises.whereFrom[noise]}
        </button>
      ))}
      {spoken.length === 0 && (
        <button
          type="button"
          class="quiet"
          onClick={() => held.show({ screen: "noise", position })}
        >
          {noises.link}
        </button>
      )}
    </p>
  );
}
