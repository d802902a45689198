import { useMemo } from "preact/hooks";
import { type Given, type Instead, insteadAt } from "#core/level/instead.ts";
import { usualProgramme } from "#core/level/stages.ts";
import { toneChangeAt } from "#core/level/tone-change.ts";
import { placeName } from "#core/report/names.ts";
import { ReachPicture } from "#ui/parts/reach-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { wantedIn } from "./levels-targets.ts";
import type { AtLevels } from "./use-levels.ts";

/** What other headphones or a bigger amplifier would give, and what the output's resistance does to the tone. */
export function LevelsInstead({ at }: { readonly at: AtLevels }) {
  const words = useWords();
  const { levelsMore: levels, figures } = words;
  const { rig, way } = at;
  const wanted = wantedIn(at.view);
  const { feed } = way;
  // Neither depends on how the knobs stand: what is drawn is enough.
  // biome-ignore lint/correctness/useExhaustiveDependencies: a knob in the hand changes nothing here
  const given = useMemo(
    () => insteadAt(rig, feed, usualProgramme, wanted),
    [rig, wanted, feed.position],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: the same
  const tone = useMemo(() => toneChangeAt(rig, feed), [rig, feed.position]);
  const whole = (value: number) => figures.fixed(value, 0);
  return (
    <details>
      <summary>{levels.instead.question}</summary>
      {given.length > 1 && (
        <>
          <p class="note">{levels.instead.how(whole(wanted))}</p>
          <ul class="reaches">
            {given.map((one) => (
              <li key={JSON.stringify(one.what)}>
                <span>{nameOf(words, at, one.what)}</span>
                <ReachPicture hiss={one.hiss} most={one.most} wanted={wanted} />
                <span>{reachWords(words, one)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {tone && (
        <p>
          {levels.tone[toneOf(tone.bump)](
            figures.plain(Number(tone.source.toPrecision(2))),
            figures.plain(Number(tone.damping.toPrecision(2))),
            figures.fixed(tone.bump, 1),
          )}{" "}
          <span class="dim">
            {tone.told ? "" : levels.tone.guessed(figures.fixed(tone.peak, 0))}
          </span>
        </p>
      )}
    </details>
  );
}

function nameOf({ levelsMore: levels, language }: Words, { rig }: AtLevels, what: Instead): string {
  switch (what.is) {
    case "now":
      return levels.instead.now;
    case "twice the volts":
      return levels.instead.bigger(placeName(language, rig, what.part));
    case "other headphones":
      return levels.instead.worn(String(what.ohms));
  }
}

function reachWords({ levelsMore: levels, figures }: Words, { most, hiss, short }: Given): string {
  const [loudest, hissing] = [figures.fixed(most, 0), figures.fixed(hiss, 0)];
  return short > 0.5
    ? levels.instead.short(loudest, hissing, figures.fixed(short, 0))
    : levels.instead.reach(loudest, hissing);
}

/** Less is not heard, and more than the other is heard at once. Common practice, no source. */
const [heard, plain] = [0.7, 2];

const toneOf = (bump: number): "same" | "little" | "much" => {
  if (bump < heard) return "same";
  return bump < plain ? "little" : "much";
};
