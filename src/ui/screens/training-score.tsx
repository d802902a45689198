import { capital } from "#core/report/phrases.ts";
import type { Round } from "#core/training/round.ts";
import { type Answered, scoreOf } from "#core/training/score.ts";
import type { Sounding } from "#core/training/soundings.ts";
import { EffectGlyph } from "#ui/parts/effect-glyph.tsx";
import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly round: Round;
  readonly answered: readonly Answered[];
  /** As it stands inside a sentence. */
  readonly nameOf: (sounding: Sounding) => string;
}

/** How it went so far, fault by fault: those that went wrong first. */
export function TrainingScore({ round, answered, nameOf }: Props) {
  const { training: words } = useWords();
  if (answered.length === 0) return null;
  const score = scoreOf(answered);
  const right = answered.filter(({ asked, given }) => asked === given).length;
  const named = new Map(round.soundings.map((one) => [one.id, one]));
  const rows = Object.entries(score)
    .flatMap(([id, tally]) => {
      const sounding = named.get(id);
      return sounding === undefined ? [] : [{ sounding, tally }];
    })
    .sort((a, b) => b.tally.asked - b.tally.right - (a.tally.asked - a.tally.right));
  return (
    <details class="score">
      <summary>{words.score(answered.length, right)}</summary>
      <ul class="soundings">
        {rows.map(({ sounding, tally }) => (
          <li key={sounding.id}>
            <EffectGlyph effect={sounding.effect} />
            <span>
              {words.tally(capital(nameOf(sounding)), tally.right, tally.asked)}
              {Object.keys(tally.takenFor).map((id) => {
                const other = named.get(id);
                return other && <small key={id}>{words.takenFor(nameOf(other))}</small>;
              })}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
