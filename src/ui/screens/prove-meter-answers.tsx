import { useId, useRef, useState } from "preact/hooks";
import type { Reading } from "#core/checks/finding.ts";
import type { NextReading } from "#core/proving/next-reading.ts";
import type { Ohms } from "#core/units/units.ts";
import { Roving } from "#ui/parts/roving.tsx";
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
  const steady: Shown = bend ? { bent: "steady" } : {};
  return (
    <>
      <Roving
        label="What does the meter show?"
        kind={bend ? "meter-answers" : "meter-answers of-two"}
      >
        <button
          type="button"
          class="sight plain"
          onClick={() => onAnswer({ ...steady, ohms: healthy })}
        >
          <strong>beep</strong> near 0 Ω
        </button>
        <button type="button" class="sight plain" onClick={() => onAnswer(steady)}>
          <strong>no beep</strong> open
        </button>
        {bend && (
          <button
            type="button"
            class="sight plain"
            onClick={() => onAnswer({ bent: "changes", ohms: healthy })}
          >
            <strong>it changes</strong> when I bend it
          </button>
        )}
        {usual.map((ohms) => (
          <button
            key={ohms}
            type="button"
            class="sight figure"
            onClick={() => onAnswer({ ...steady, ohms })}
          >
            {`about ${ohmsWords(ohms)}`}
          </button>
        ))}
      </Roving>
      <Figure onEnter={(ohms) => onAnswer({ ...steady, ohms })} />
    </>
  );
}

/** A figure typed in. What is not understood is refused in words and stays written. */
function Figure({ onEnter }: { readonly onEnter: (ohms: Ohms) => void }) {
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
      <label for={id}>or as it reads, in Ω</label>
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
        enter
      </button>
      <p class={refused ? "refused" : "hidden"} id={`${id}-said`} aria-live="polite">
        {refused
          ? `'${text}' is not understood: a number of ohms, as 0.4 or 12 or 1.2k. Where the meter shows OL or 1 alone, point at 'no beep'.`
          : ""}
      </p>
    </form>
  );
}
