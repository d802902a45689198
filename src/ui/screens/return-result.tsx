import type { ComponentChildren } from "preact";
import type { Granted } from "#audio/granted.ts";
import { matrixOf, type Taken } from "#core/proving/lead-matrix.ts";
import { capital } from "#core/report/phrases.ts";
import { MeasuredPicture } from "#ui/parts/measured-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { grantedWords } from "./measure-words.ts";
import { effectIn, shownEntries } from "./return-shown.ts";
import { besideLines, overLines, sideLines, timeLines } from "./return-words.ts";

interface Props {
  readonly taken: Taken;
  /** What levels are told against, where a healthy lead was measured. */
  readonly healthy: Taken | undefined;
  /** What was recorded here; nothing is known of where a file comes from. */
  readonly granted?: Granted;
  readonly returns: "joined" | "load box" | undefined;
  readonly children?: ComponentChildren;
}

/** What was measured: drawn, then said with its numbers. */
export function ReturnResult({ taken, healthy, granted, returns, children }: Props) {
  const words = useWords();
  const { result } = words.returning;
  const entries = shownEntries(taken, healthy);
  const { measured } = taken;
  const matrix = matrixOf(taken, healthy);
  const lines = [...sideLines(words, entries), ...overLines(words, measured)];
  return (
    <>
      <Heading>
        {matrix ? capital(words.language.effects[effectIn(matrix)]) : result.oneInput}
      </Heading>
      <p class="hint">{matrix ? result.matrixHint : result.oneInputHint}</p>
      <MeasuredPicture entries={entries} label={lines.join(" ")} />
      <ul class="measured-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="note">
        {healthy ? result.againstHealthy : result.asItComes}
        {measured.stretches !== "both" && ` ${result.oneStretch}`}
      </p>
      <details>
        <summary>{result.more}</summary>
        <ul class="measured-lines">
          {[
            ...besideLines(words, measured),
            ...timeLines(words, measured, granted !== undefined),
          ].map((line) => (
            <li key={line}>{line}</li>
          ))}
          {granted && <li>{grantedWords(words, granted)}</li>}
        </ul>
      </details>
      {returns !== "load box" && (
        <p class="note">{granted ? words.flex.limits.sleeve : result.sleeveElsewhere}</p>
      )}
      {children}
    </>
  );
}
