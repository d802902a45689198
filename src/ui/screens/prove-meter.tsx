import type { Reading } from "#core/checks/finding.ts";
import { readingsIn } from "#core/proving/meter-belief.ts";
import { isSamePair } from "#core/proving/meter-view.ts";
import type { NextReading } from "#core/proving/next-reading.ts";
import { readingsLeft } from "#core/proving/readings-left.ts";
import { LeadDrawing } from "#ui/parts/lead-drawing.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { redrawn } from "./prove-begun.ts";
import { LastReading } from "./prove-last.tsx";
import { MeterAnswers } from "./prove-meter-answers.tsx";
import { contactWords } from "./prove-names.ts";
import { soFar } from "./prove-so-far.ts";
import type { AtProving } from "./prove-work.tsx";

type Props = AtProving & { readonly reading: NextReading };

/** Two contacts to touch, drawn with the probes on them, and what the meter shows. */
export function ProveMeter({ held, derived, lead, spelled, proof, reading }: Props) {
  const words = useWords();
  const { meter, you } = words.prove;
  const wide = useWide(42);
  const { from, to } = reading.asked;
  const [one, other] = [contactWords(words, spelled, from), contactWords(words, spelled, to)];
  const first = derived.happenings.length === 0;
  const again = readingsIn(derived.happenings).some(({ asked }) =>
    isSamePair(asked, reading.asked),
  );
  const answer = (shown: Pick<Reading, "ohms" | "bent">) => {
    const finding: Reading = { asked: reading.asked, ...shown };
    const happenings = [...derived.happenings, { kind: "finding", finding } as const];
    held.enter({ entry: "finding", finding }, ...redrawn(lead, you, happenings));
  };
  return (
    <section class="prove metering">
      <header>
        <Tape>{lead.unknown ? meter.unknown : words.language.patching.kinds[lead.kind].name}</Tape>
        <Heading>{meter.touch(one, other)}</Heading>
        <p class="hint">
          {again && `${meter.again} `}
          {reading.bend ? meter.bend : apart(words, lead)}
        </p>
      </header>
      <LeadDrawing
        spelled={spelled}
        wires={soFar(derived, proof)}
        probes={[from, to]}
        wide={wide}
        label={meter.drawn(one, other)}
      />
      <div>
        <MeterAnswers reading={reading} onAnswer={answer} />
        <p class="left-words" aria-live="polite">
          {leftWords(words, readingsLeft(derived.model.rig, proof), lead, proof)}
        </p>
        <LastReading held={held} spelled={spelled} />
      </div>
      <MeterCautions first={first} alike={isAlike(spelled)} />
    </section>
  );
}

/** Of a lead that nobody knows nobody knows what should meet. */
const apart = ({ prove: { meter } }: Words, { unknown }: AtProving["lead"]): string =>
  unknown ? meter.mayLie : meter.apart;

function leftWords(
  { prove: { meter } }: Words,
  left: number,
  { unknown }: AtProving["lead"],
  { believed }: AtProving["proof"],
): string {
  if (believed.length === 0) return meter.left(left);
  return unknown ? meter.moreToTell : meter.moreOfWrong;
}

/** Whether its two ends look the same, so that somebody may take one for the other. */
const isAlike = ({ west, east }: AtProving["spelled"]): boolean =>
  west.length === east.length && west[0]?.kind === east[0]?.kind && !east[0]?.isSocket;

function MeterCautions({ first, alike }: { readonly first: boolean; readonly alike: boolean }) {
  const { cautions } = useWords().prove.meter;
  if (!first) return <p class="dim">{cautions.brief}</p>;
  return (
    <ul class="cautions">
      <li>{cautions.out}</li>
      <li>{cautions.ohms}</li>
      {alike && <li>{cautions.alike}</li>}
    </ul>
  );
}
