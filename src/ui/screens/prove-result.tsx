import { useMemo } from "preact/hooks";
import type { Candidate } from "#core/proving/candidates.ts";
import type { Proof } from "#core/proving/proof.ts";
import { returnTold } from "#core/proving/return-told.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import { type Wire, wiringOf } from "#core/proving/wiring.ts";
import { capital, howSure, inHundred } from "#core/report/phrases.ts";
import type { Probability } from "#core/units/units.ts";
import { leadPins } from "#ui/parts/lead-pins.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { type Chosen, candidatesFor, proving } from "./prove-begun.ts";
import { LastReading } from "./prove-last.tsx";
import { isSoldered, isUnlisted, leadFaultWords, mendLines } from "./prove-mend.ts";
import { returnWords } from "./prove-return-words.ts";
import { unseenNames } from "./prove-unseen.ts";
import { ProveWirings } from "./prove-wirings.tsx";
import type { AtProving } from "./prove-work.tsx";

/** What the lead is believed to be, beside what it was meant to be; what to solder, and what was not tested. */
export function ProveResult(at: AtProving) {
  const { held, derived, spelled, proof, lead } = at;
  const words = useWords();
  const { result } = words.prove;
  const { rig } = derived.model;
  const wires = wiringOf(rig, proof.believed);
  const unseen = useMemo(
    () => unseenNames(words, spelled, unseenBy(lead.by, derived.rig)),
    [words, spelled, lead.by, derived.rig],
  );
  return (
    <section class="prove proved">
      <Tape yellow={proof.state !== "healthy"}>
        {words.language.patching.kinds[lead.kind].name}
      </Tape>
      <Heading>
        {proof.state === "healthy" && <Tick />} {headWords(words, at)}
      </Heading>
      <p class="sure">{sureWords(words, at)}</p>
      {lead.by === "load box" && (
        <p>{returnWords(words, returnTold(derived.rig, derived.happenings))}</p>
      )}
      <ProveWirings {...at} wires={wires} />
      <div class="columns">
        <div class="next-move">
          <ToDo at={at} wires={wires} />
          <Onward at={at} />
        </div>
        <div class="beside">
          <h2>{result.cannotSee}</h2>
          <ul>
            {unseen.map((name) => (
              <li key={name}>{result.notTested(name)}</li>
            ))}
            <li>{result.cancelling}</li>
          </ul>
          <Alike at={at} />
          <MayBe at={at} />
        </div>
      </div>
      <LastReading held={held} spelled={spelled} />
    </section>
  );
}

function headWords(words: Words, { spelled, lead, proof: { state, believed } }: AtProving): string {
  const { asItShould, itIs, unsure, faults } = words.prove.result;
  const { name } = words.language.patching.kinds[lead.kind];
  if (state === "healthy") return lead.unknown ? itIs(name) : asItShould;
  if (state === "unsure") return unsure;
  return faults(believed.map((fault) => leadFaultWords(words, spelled, fault)));
}

function sureWords(
  words: Words,
  { spelled, proof: { state, probability, believed } }: AtProving,
): string {
  const { sure, nothingFound, likeliest } = words.prove.result;
  const [how, odds] = [
    howSure(words.language, probability),
    inHundred(words.language, probability),
  ];
  if (state !== "unsure") return sure(how, odds);
  const faults = believed.map((fault) => leadFaultWords(words, spelled, fault));
  return faults.length === 0 ? nothingFound(how, odds) : likeliest(faults, how, odds);
}

interface Wired {
  readonly at: AtProving;
  readonly wires: readonly Wire[];
}

/** What to solder, where something is wrong. */
function ToDo({ at: { spelled, proof }, wires }: Wired) {
  const words = useWords();
  const { whatNow, toMend, cautions } = words.prove.result;
  if (proof.believed.length === 0) return null;
  return (
    <>
      <h2>{isUnlisted(proof.believed) ? whatNow : toMend}</h2>
      {mendLines(words, spelled, wires, proof.believed).map((text) => (
        <p key={text} class="move">
          {text}
        </p>
      ))}
      {isSoldered(proof.believed) && (
        <ul class="cautions">
          {cautions.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** The ways on from here. Where ears are not sure, a meter is. */
function Onward({ at: { held, lead, proof } }: Pick<Wired, "at">) {
  const { result, you } = useWords().prove;
  const begin = (next: Chosen) => held.change((page) => proving(page, next, you, held.edges.now()));
  const anew = () => begin(lead);
  const unlisted = isUnlisted(proof.believed);
  const byMeter = (proof.state === "unsure" || unlisted) && lead.by !== "meter";
  return (
    <div class="foot">
      {byMeter && (
        <button type="button" class="main" onClick={() => begin({ ...lead, by: "meter" })}>
          {result.byMeter}
        </button>
      )}
      {proof.believed.length > 0 && (
        <button
          type="button"
          class={proof.state === "wrong" && !byMeter ? "main" : "say"}
          onClick={anew}
        >
          {unlisted ? result.checkAgain : result.doneCheckAgain}
        </button>
      )}
      <button type="button" class={proof.state === "healthy" ? "main" : "say"} onClick={anew}>
        {lead.unknown ? result.tellAnother : result.another}
      </button>
      <button
        type="button"
        class="say"
        onClick={() => held.show({ screen: "prove", lead: { kind: lead.kind } })}
      >
        {result.otherWay}
      </button>
    </div>
  );
}

/** What nothing on offer tells from what is named. */
function Alike({ at: { spelled, proof } }: Pick<Wired, "at">) {
  const words = useWords();
  const others = othersOf(proof).map((fault) => leadFaultWords(words, spelled, fault));
  if (others.length === 0) return null;
  return (
    <>
      <h2>{words.prove.result.alike}</h2>
      <ul>
        {[...new Set(others)].map((text) => (
          <li key={text}>{capital(text)}</li>
        ))}
      </ul>
    </>
  );
}

const othersOf = ({ alike, believed }: Proof) => alike.filter((fault) => !believed.includes(fault));

/** So likely is what else an unknown lead may be named. */
const named: Probability = 0.02;

/** What else an unknown lead may be. */
function MayBe({ at: { lead, derived } }: Pick<Wired, "at">) {
  const words = useWords();
  if (!lead.unknown) return null;
  const others = candidatesFor(lead, derived.happenings).filter(
    ({ kind, probability }) => kind !== lead.kind && probability >= named,
  );
  if (others.length === 0) return null;
  return (
    <>
      <h2>{words.prove.result.mayBe}</h2>
      <ul>
        {others.map((one) => (
          <li key={one.kind}>{candidateWords(words, one)}</li>
        ))}
      </ul>
    </>
  );
}

function candidateWords(words: Words, { kind, probability, fault }: Candidate): string {
  const { candidate, candidateWith } = words.prove.result;
  const { name } = words.language.patching.kinds[kind];
  const odds = inHundred(words.language, probability);
  return fault
    ? candidateWith(name, leadFaultWords(words, leadPins(kind), fault), odds)
    : candidate(name, odds);
}
