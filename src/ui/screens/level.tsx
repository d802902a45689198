import type { Held } from "./use-page.ts";
import { emergency } from "./words.ts";

/** How loud it leaves the program, in small steps; when it reaches the ears, where that is known; and which way the head looks. */
export function Level({ held: { page, world, edges, change } }: { readonly held: Held }) {
  const { louder, softer } = edges.player;
  return (
    <footer class="level">
      <p class="loudness">
        <span class="now">{levelWords(world.level)}</span>
        {page.sounded && (
          <span>
            <button type="button" class="step" onClick={softer}>
              softer
            </button>
            <button type="button" class="step" onClick={louder}>
              louder
            </button>
          </span>
        )}
      </p>
      <p class="note">{page.sounded ? "One press is 3 dB." : "It starts quietly."}</p>
      {world.delay !== undefined && (
        <p class="note">{`reaches the ears ${Math.round(world.delay * 1000)} ms after the program, later if wireless`}</p>
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

/** With the minus that a minus is. */
const levelWords = (level: number): string =>
  `${level < 0 ? "−" : ""}${Math.abs(Math.round(level))} dBFS`;
