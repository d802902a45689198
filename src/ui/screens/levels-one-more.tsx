import { useMemo, useState } from "preact/hooks";
import { hissOf } from "#core/level/advice.ts";
import { type OneMore, waysForOneMore } from "#core/level/one-more.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { placeName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import { effectBriefly } from "#ui/parts/fault-effect.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { wantedIn } from "./levels-targets.ts";
import type { AtLevels } from "./use-levels.ts";

/** More are not shown: the rest is worse. */
const shown = 4;
/** Less is not noticed, decibels. */
const noticed = 0.5;

/** What one more listener does to who listens already, and which socket to take it from. */
export function LevelsOneMore({ at }: { readonly at: AtLevels }) {
  const { levelsMore } = useWords();
  const [open, setOpen] = useState(false);
  return (
    <details onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{levelsMore.oneMore.question}</summary>
      {open && <Ways at={at} />}
    </details>
  );
}

function Ways({ at }: { readonly at: AtLevels }) {
  const words = useWords();
  const { oneMore } = words.levelsMore;
  const { drawn, position } = at;
  const wanted = wantedIn(at.view);
  const { kinds } = words.language.patching;
  const ways = useMemo(
    () =>
      waysForOneMore(drawn, position, {
        programme: usualProgramme,
        wanted,
        called: (kind) => kinds[kind].name,
      }),
    [drawn, position, wanted, kinds],
  );
  if (ways.length === 0) return <p>{oneMore.none}</p>;
  return (
    <>
      <p class="note">{oneMore.how}</p>
      <ol class="one-more">
        {ways.slice(0, shown).map((one) => (
          <li key={JSON.stringify(one.way)}>
            <span>{sentence(wayWords(words, at, one.way))}</span>
            <span class="dim">{changes(words, one).join("; ")}</span>
            <button
              type="button"
              class="quiet"
              onClick={({ currentTarget }) => {
                // The rig that is drawn then has other ways: this one goes.
                currentTarget.closest("details")?.querySelector("summary")?.focus();
                at.draw(one.rig);
              }}
            >
              {oneMore.draw}
            </button>
          </li>
        ))}
      </ol>
    </>
  );
}

function wayWords(words: Words, { rig }: AtLevels, way: OneMore["way"]): string {
  const { ways } = words.levelsMore.oneMore;
  const place = "socket" in way ? `${way.part}, ${way.socket}` : way.part;
  return ways[way.way](placeName(words.language, rig, place));
}

/** What changes for who was there, and what the newcomer gets. */
function changes(
  { levelsMore: { oneMore }, figures, language }: Words,
  { louder, advice, effect, strains }: OneMore,
): readonly string[] {
  const by = figures.fixed(Math.abs(louder), 1);
  const moved = louder < 0 ? oneMore.softer(by) : oneMore.louder(by);
  const missing = effectBriefly(language, effect);
  return [
    Math.abs(louder) < noticed ? oneMore.same : moved,
    oneMore.hiss(figures.fixed(hissOf(advice.then), 0)),
    ...(advice.short > noticed ? [oneMore.short(figures.fixed(advice.short, 0))] : []),
    ...(effect !== "straight" && missing ? [oneMore.lost(missing)] : []),
    ...(strains.length > 0 ? [oneMore.strained] : []),
  ];
}
