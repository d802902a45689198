import { useId, useRef, useState } from "preact/hooks";
import type { Reading } from "#core/checks/finding.ts";
import type { NextReading } from "#core/proving/next-reading.ts";
import type { Ohms } from "#core/units/units.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { ohmsWords, readOhms } from "./prove-names.ts";

type Shown = Pick<Reading, "ohms" | "bent">;

interface Props {
  readonly reading: NextReading;
  readonly onAnswer: (shown: Shown) => void;
}

/** What a meter may show besides nothing and an open circuit: dirt of some size. */
const usual: readonly Ohms[] = [3, 10, 30, 300];
/** What stands for near nothing where the two should not meet: what a meter's own leads add. */
const touching: Ohms = 0.3;

/** What the meter shows, pointed at: a beep, none, a figure, or that it comes and goes. */
export function MeterAnswers({ reading: { bend, healthy = touching }, onAnswer }: Props) {
  const words = useWords();
  const { meter } = words.prove;
  const steady: Shown = bend ? { bent: "steady" } : {};
  return (
    <>
      <Roving label={meter.shows} kind={bend ? "meter-answers" : "meter-answers of-two"}>
        <button
          type="button"
          class="sight plain"
          onClick={() => onAnswer({ ...steady, ohms: healthy })}
        >
          <Named words={meter.beep} />
        </button>
        <button type="button" class="sight plain" onClick={() => onAnswer(steady)}>
          <Named words={meter.noBeep} />
        </button>
        {bend && (
          <button
            type="button"
            class="sight plain"
            onClick={() => onAnswer({ bent: "changes", ohms: healthy })}
          >
            <Named words={meter.changes} />
          </button>
        )}
        {usual.map((ohms) => (
          <button
            key={ohms}
            type="button"
            class="sight figure"
            onClick={() => onAnswer({ ...steady, ohms })}
          >
            {meter.about(ohmsWords(words, ohms))}
          </button>
        ))}
      </Roving>
      <Figure onEnter={(ohms) => onAnswer({ ...steady, ohms })} />
    </>
  );
}

/** What a meter does, and beside it what that is. */
const Named = ({ words: [name, more] }: { readonly words: readonly string[] }) => (
  <>
    <strong>{name}</strong> {more}
  </>
);

/** A figure typed in. What is not understood is refused in words and stays written. */
function Figure({ onEnter }: { readonly onEnter: (ohms: Ohms) => void }) {
  const { meter } = useWords().prove;
  const id = useId();
  const [text, setText] = useState("");
  const [refused, setRefused] = useState(false);
  const figure = useRef<HTMLInputElement>(null);
  const enter = () => {
    const ohms = readOhms(text);
    setRefused(ohms === undefined);
    if (ohms === undefined) figure.current?.select();
    else onEnter(ohms);
  };
  return (
    <form
      class="figure-in"
      onSubmit={(event) => {
        event.preventDefault();
        enter();
      }}
    >
      <label for={id}>{meter.typed}</label>
      <input
        id={id}
        ref={figure}
        inputMode="decimal"
        autocomplete="off"
        value={text}
        aria-invalid={refused}
        aria-describedby={`${id}-said`}
        onInput={({ currentTarget }) => setText(currentTarget.value)}
      />
      <button type="submit" class="step">
        {meter.enter}
      </button>
      <p class={refused ? "refused" : "hidden"} id={`${id}-said`} aria-live="polite">
        {refused ? meter.refused(text) : ""}
      </p>
    </form>
  );
}
