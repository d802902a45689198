import type { ComponentChildren } from "preact";
import type { Granted } from "#audio/granted.ts";
import { matrixOf, type Taken } from "#core/proving/lead-matrix.ts";
import { capital } from "#core/report/phrases.ts";
import { english } from "#core/words/english.ts";
import { MeasuredPicture } from "#ui/parts/measured-picture.tsx";
import { limitWords } from "./flex-words.ts";
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

const sleeveElsewhere =
  "The sleeve: not tested, unless what played and what recorded had no ground in common but this lead.";

/** What was measured: drawn, then said with its numbers. */
export function ReturnResult({ taken, healthy, granted, returns, children }: Props) {
  const entries = shownEntries(taken, healthy);
  const { measured } = taken;
  const matrix = matrixOf(taken, healthy);
  const lines = [...sideLines(entries), ...overLines(measured)];
  return (
    <>
      <Heading>
        {matrix ? capital(english.effects[effectIn(matrix)]) : "Only one input was heard"}
      </Heading>
      <p class="hint">
        {matrix
          ? "That is what ears would get of it, by its gains at 1 kHz."
          : "What comes by the other one is not known: this is half of it."}
      </p>
      <MeasuredPicture entries={entries} label={lines.join(" ")} />
      <ul class="measured-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="note">
        {healthy
          ? "Levels of left and right are against the healthy lead, over 100 Hz to 15 kHz."
          : "As it comes: levels are against the strongest of what came, over 100 Hz to 15 kHz. What both sides lost together does not show."}
        {measured.stretches !== "both" &&
          " Only one of the signal's two stretches is there from end to end."}
      </p>
      <details>
        <summary>Noise, hum, distortion, delay</summary>
        <ul class="measured-lines">
          {[...besideLines(measured), ...timeLines(measured, granted !== undefined)].map((line) => (
            <li key={line}>{line}</li>
          ))}
          {granted && <li>{grantedWords(granted)}</li>}
        </ul>
      </details>
      {returns !== "load box" && (
        <p class="note">{granted ? limitWords.sleeve : sleeveElsewhere}</p>
      )}
      {children}
    </>
  );
}
