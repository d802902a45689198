import { useState } from "preact/hooks";
import type { MatrixTold } from "#core/proving/lead-matrix.ts";
import type { Gains } from "#core/rig/effect.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { Prepare, useWays } from "./measure-prepare.tsx";
import { whyBefore } from "./measure-words.ts";
import { type ReturnStepProps, ReturnSteps } from "./return-steps.tsx";
import { type Instruments, useInstruments } from "./use-instruments.ts";
import type { Held } from "./use-page.ts";
import { type Against, useReturn } from "./use-return.ts";

/** What is measured once a lead was: that one once more, since it is not told yet, or another in its place; left out, whatever comes. */
export type After = "the same" | "another" | undefined;

interface Props {
  readonly held: Held;
  /** A lead was measured: its matrix at 1 kHz as a finding has it. Called once each time. */
  readonly onMatrix: (told: MatrixTold) => void;
  /** What a healthy one of its kind brings where; left out, left to the left and right to the right. */
  readonly meant?: Gains | undefined;
  readonly after?: After;
}

/** What lies between an output and an input of this computer, measured: from the hook-up to the result. */
export function ReturnMeasure({ held, onMatrix, meant, after }: Props) {
  const { title } = useWords().returning;
  const instruments = useInstruments(held);
  return (
    <div class="measure">
      {instruments ? (
        <Return
          held={held}
          instruments={instruments}
          onMatrix={onMatrix}
          meant={meant}
          after={after}
        />
      ) : (
        <Heading>{title}</Heading>
      )}
    </div>
  );
}

function Return({
  held,
  instruments,
  onMatrix,
  meant,
  after,
}: Props & { readonly instruments: Instruments }) {
  const [against, setAgainst] = useState<Against>("healthy");
  const { ways } = useWays(held);
  const bout = useReturn(held, instruments, { ways, against, meant, onMatrix });
  const props = { held, instruments, bout, against, onAgainst: setAgainst, after };
  return bout.step.at === "before" ? <Before {...props} /> : <ReturnSteps {...props} />;
}

function Before({ held, instruments, bout, against, onAgainst }: ReturnStepProps) {
  const words = useWords();
  const { before } = words.returning;
  const { step } = bout;
  const first = against === "healthy" && bout.healthy === undefined;
  return (
    <Prepare
      held={held}
      instruments={instruments}
      title={first ? before.good : before.any}
      hint={before.hint}
      trouble={step.at === "before" ? whyBefore(words, step.trouble, step.found) : undefined}
    >
      <AgainstWhat against={against} onAgainst={onAgainst} />
      <div class="foot">
        <button type="button" class="main" onClick={bout.start}>
          {first ? before.measureGood : before.measure}
        </button>
        <button type="button" class="quiet" onClick={bout.raise}>
          {before.byHand}
        </button>
      </div>
    </Prepare>
  );
}

function AgainstWhat({ against, onAgainst }: Pick<ReturnStepProps, "against" | "onAgainst">) {
  const { before } = useWords().returning;
  const choices = [
    ["healthy", before.healthy, before.healthyNote],
    ["as it comes", before.asItComes, before.asItComesNote],
  ] as const;
  return (
    <Roving label={before.against} kind="points against">
      {choices.map(([name, words, note]) => (
        <button
          key={name}
          type="button"
          class="point"
          aria-pressed={against === name}
          onClick={() => onAgainst(name)}
        >
          <span>
            {words}
            <small>{note}</small>
          </span>
        </button>
      ))}
    </Roving>
  );
}
