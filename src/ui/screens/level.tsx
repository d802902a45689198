import { shareOfDay } from "#core/hearing/exposure.ts";
import { levelCap } from "#core/signals/caps.ts";
import { Loudness } from "./loudness.tsx";
import { dbfs } from "./numbers.ts";
import type { Held } from "./use-page.ts";
import { emergency, routeWords } from "./words.ts";

/** How loud it leaves the program, in small steps; what was heard so far; when it reaches the ears, where that is known. */
export function Level({ held }: { readonly held: Held }) {
  const { page, world, edges, change } = held;
  return (
    <footer class="level">
      <Loudness level={world.level} muted={world.muted} free={page.sounded} by={edges.player} />
      <p class="note">
        {page.sounded ? "One press is 3 dB; hold it for more." : "It starts quietly."}
      </p>
      <Facts world={world} />
      {page.sounded && page.view.screen !== "sound out" && (
        <p class="note">
          <button
            type="button"
            class="quiet"
            onClick={() => held.show({ screen: "sound out", from: page.view })}
          >
            {`to ${routeWords(world)}`}
          </button>
        </p>
      )}
      <p class="note">{emergency}</p>
      {page.view.screen === "position" && (
        <button
          type="button"
          class="quiet turn"
          aria-pressed={page.facing}
          onClick={() => change((one) => ({ ...one, facing: !one.facing }))}
        >
          facing them
        </button>
      )}
    </footer>
  );
}

/** How much was heard here and how late it arrives; the reckoning behind it when asked. */
function Facts({ world: { exposure, delay } }: Pick<Held, "world">) {
  const { seconds } = exposure;
  const long = seconds < 90 ? `${Math.ceil(seconds)} s` : `${Math.round(seconds / 60)} min`;
  const share = Math.ceil(100 * shareOfDay(exposure));
  const late = delay === undefined ? undefined : Math.round(delay * 1000);
  if (seconds === 0) return null;
  return (
    <details class="note">
      <summary>{`${long} of sound here${late === undefined ? "" : `, ${late} ms late`}`}</summary>
      <p>
        {`${share <= 1 ? "Under 1 %" : `Up to ${share} %`} of a day's noise (85 dBA for 8 hours), with sensitive headphones on 1 V; a stronger amplifier makes it more. It never leaves the program above ${dbfs(levelCap)}, the red line.`}
      </p>
      {late !== undefined && (
        <p>{`The sound reaches the ears ${late} ms after the program, later if wireless; so does silence.`}</p>
      )}
    </details>
  );
}
