import { startLevel } from "#core/signals/caps.ts";
import type { Held } from "./use-page.ts";
import { emergency } from "./words.ts";

/** How loud it leaves the program, in small steps; when it reaches the ears, where that is known; and which way the head looks. */
export function Level({ held: { page, world, edges, doings } }: { readonly held: Held }) {
  const { louder, softer } = edges.player;
  return (
    <footer class="level">
      <p class="loudness">
        <output>{levelWords(world.level)}</output>
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
      <p class="note">{levelNote(world.level, page.sounded)}</p>
      {world.delay !== undefined && (
        <p class="note">{`reaches the ears ${Math.round(world.delay * 1000)} ms after the program, later if wireless`}</p>
      )}
      <p class="note">{emergency}</p>
      <button type="button" class="quiet turn" aria-pressed={page.facing} onClick={doings.turn}>
        facing them
      </button>
    </footer>
  );
}

/** With the minus that a minus is. */
const levelWords = (level: number): string =>
  `${level < 0 ? "−" : ""}${Math.abs(Math.round(level))} dBFS`;

function levelNote(level: number, sounded: boolean): string {
  if (!sounded) return "It starts quietly.";
  return level < startLevel
    ? "It came back 20 dB lower after hands were on the gear. Raise it step by step."
    : "One press, 3 dB.";
}
