import type { Reading } from "#core/checks/finding.ts";
import { readingsIn } from "#core/proving/meter-belief.ts";
import { isSamePair } from "#core/proving/meter-view.ts";
import type { NextReading } from "#core/proving/next-reading.ts";
import { readingsLeft } from "#core/proving/readings-left.ts";
import { counted } from "#core/report/phrases.ts";
import { english } from "#core/words/english.ts";
import { LeadDrawing } from "#ui/parts/lead-drawing.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { Heading } from "./frame.tsx";
import { redrawn } from "./prove-begun.ts";
import { LastReading } from "./prove-last.tsx";
import { MeterAnswers } from "./prove-meter-answers.tsx";
import { theContact } from "./prove-names.ts";
import { soFar } from "./prove-so-far.ts";
import type { AtProving } from "./prove-work.tsx";

type Props = AtProving & { readonly reading: NextReading };

/** Two contacts to touch, drawn with the probes on them, and what the meter shows. */
export function ProveMeter({ held, derived, lead, spelled, proof, reading }: Props) {
  const wide = useWide(42);
  const { from, to } = reading.asked;
  const [one, other] = [from, to].map((node) => theContact(spelled, node));
  const first = derived.happenings.length === 0;
  const again = readingsIn(derived.happenings).some(({ asked }) =>
    isSamePair(asked, reading.asked),
  );
  const answer = (shown: Pick<Reading, "ohms" | "bent">) => {
    const finding: Reading = { asked: reading.asked, ...shown };
    const happenings = [...derived.happenings, { kind: "finding", finding } as const];
    held.enter({ entry: "finding", finding }, ...redrawn(lead, happenings));
  };
  return (
    <section class="prove metering">
      <header>
        <Tape>{lead.unknown ? "a lead to tell" : english.patching.kinds[lead.kind].name}</Tape>
        <Heading>{`Touch ${one} and ${other}.`}</Heading>
        <p class="hint">
          {again && "Once more, to be sure. "}
          {reading.bend
            ? "Keep both probes on, and bend the lead along its length and at its plugs."
            : apart(lead)}
        </p>
      </header>
      <LeadDrawing
        spelled={spelled}
        wires={soFar(derived, proof)}
        probes={[from, to]}
        wide={wide}
        label={`One probe on ${one}, the other on ${other}.`}
      />
      <div>
        <MeterAnswers reading={reading} onAnswer={answer} />
        <p class="left-words" aria-live="polite">
          {leftWords(readingsLeft(derived.model.rig, proof), lead, proof)}
        </p>
        <LastReading held={held} spelled={spelled} />
      </div>
      <MeterCautions first={first} alike={isAlike(spelled)} />
    </section>
  );
}

/** Of a lead that nobody knows nobody knows what should meet. */
const apart = ({ unknown }: AtProving["lead"]): string =>
  unknown ? "The lead may lie still for this one." : "These two should not meet.";

function leftWords(
  left: number,
  { unknown }: AtProving["lead"],
  { believed }: AtProving["proof"],
): string {
  if (believed.length === 0)
    return `${counted(left, "reading", "readings")} left where all is well; more where something is not.`;
  return unknown
    ? "It is not what it looked like, or something is wrong in it: a few more tell."
    : "Something is not as it should be: a few more tell what.";
}

/** Whether its two ends look the same, so that somebody may take one for the other. */
const isAlike = ({ west, east }: AtProving["spelled"]): boolean =>
  west.length === east.length && west[0]?.kind === east[0]?.kind && !east[0]?.isSocket;

const MeterCautions = ({ first, alike }: { readonly first: boolean; readonly alike: boolean }) =>
  first ? (
    <ul class="cautions">
      <li>
        The lead out of everything, at both ends. Never while somebody wears what hangs on it: a
        meter clicks at 85 dB in the ears.
      </li>
      <li>
        The meter on its lowest ohms, with its beep where it has one. Put the probes together first:
        what it shows then is its own.
      </li>
      {alike && <li>Both ends look alike: a bit of tape on one of them, marked A.</li>}
    </ul>
  ) : (
    <p class="dim">Unplugged at both ends; never while worn.</p>
  );
