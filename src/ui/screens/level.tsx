import { shareOfDay } from "#core/hearing/exposure.ts";
import { levelCap } from "#core/signals/caps.ts";
import { useWords } from "#ui/words/use-words.ts";
import { Loudness } from "./loudness.tsx";
import type { Held } from "./use-page.ts";
import { routeWords } from "./words.ts";

/** How loud it leaves the program, in small steps; what was heard so far; when it reaches the ears, where that is known. */
export function Level({ held }: { readonly held: Held }) {
  const words = useWords().sounding;
  const { page, world, edges } = held;
  return (
    <footer class="level">
      <Loudness level={world.level} muted={world.muted} free={page.sounded} by={edges.player} />
      <p class="note">{page.sounded ? words.onePress : words.startsQuietly}</p>
      <Facts world={world} />
      {page.sounded && page.view.screen !== "sound out" && (
        <p class="note">
          <button
            type="button"
            class="quiet"
            onClick={() => held.show({ screen: "sound out", from: page.view })}
          >
            {words.playsTo(routeWords(words, world))}
          </button>
        </p>
      )}
      <p class="note">{words.emergency}</p>
    </footer>
  );
}

/** How much was heard here and how late it arrives; the reckoning behind it when asked. */
function Facts({ world: { exposure, delay } }: Pick<Held, "world">) {
  const { figures, sounding: words } = useWords();
  const { seconds } = exposure;
  const long = seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;
  const share = Math.ceil(100 * shareOfDay(exposure));
  const late = delay === undefined ? undefined : Math.round(delay * 1000);
  if (seconds === 0) return null;
  return (
    <details class="note">
      <summary>{late === undefined ? words.soFar(long) : words.soFarLate(long, late)}</summary>
      <p>{words.dose(share, figures.dbfs(levelCap))}</p>
      {late !== undefined && <p>{words.late(late)}</p>}
    </details>
  );
}
