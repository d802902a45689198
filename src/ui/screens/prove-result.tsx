import { useMemo } from "preact/hooks";
import type { Proof } from "#core/proving/proof.ts";
import { returnTold } from "#core/proving/return-told.ts";
import { unseenBy } from "#core/proving/unseen.ts";
import { type Wire, wiringOf } from "#core/proving/wiring.ts";
import { capital, howSure, inHundred, sentence } from "#core/report/phrases.ts";
import type { Probability } from "#core/units/units.ts";
import { english } from "#core/words/english.ts";
import { leadPins } from "#ui/parts/lead-pins.ts";
import { Tick } from "#ui/parts/marks.tsx";
import { Tape } from "#ui/parts/tape.tsx";
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
  const { rig } = derived.model;
  const wires = wiringOf(rig, proof.believed);
  const unseen = useMemo(
    () => unseenNames(spelled, unseenBy(lead.by, derived.rig)),
    [spelled, lead.by, derived.rig],
  );
  return (
    <section class="prove proved">
      <Tape yellow={proof.state !== "healthy"}>{english.patching.kinds[lead.kind].name}</Tape>
      <Heading>
        {proof.state === "healthy" && <Tick />} {headWords(at)}
      </Heading>
      <p class="sure">{sureWords(at)}</p>
      {lead.by === "load box" && <p>{returnWords(returnTold(derived.rig, derived.happenings))}</p>}
      <ProveWirings {...at} wires={wires} />
      <div class="columns">
        <div class="next-move">
          <ToDo at={at} wires={wires} />
          <Onward at={at} />
        </div>
        <div class="beside">
          <h2>What this way cannot see</h2>
          <ul>
            {unseen.map((name) => (
              <li key={name}>{`${name}: not tested`}</li>
            ))}
            <li>two faults that cancel each other</li>
          </ul>
          <Alike at={at} />
          <MayBe at={at} />
        </div>
      </div>
      <LastReading held={held} spelled={spelled} />
    </section>
  );
}

const headWords = ({ spelled, lead, proof: { state, believed } }: AtProving): string => {
  const name = english.patching.kinds[lead.kind].name;
  if (state === "healthy")
    return lead.unknown ? `It is this: ${name}. Nothing is wrong with it.` : "As it should be";
  if (state === "unsure") return "Not sure.";
  return sentence(believed.map((fault) => leadFaultWords(spelled, fault)).join(", and "));
};

function sureWords({ spelled, proof: { state, probability, believed } }: AtProving): string {
  const words = `${howSure(english, probability)}, ${inHundred(english, probability)}`;
  if (state !== "unsure") return sentence(words);
  const text = believed.map((fault) => leadFaultWords(spelled, fault)).join(", and ");
  return text === ""
    ? `Nothing wrong was found, and some was not tried: ${words}.`
    : `Nothing more tells here. The likeliest: ${text} (${words}).`;
}

interface Wired {
  readonly at: AtProving;
  readonly wires: readonly Wire[];
}

/** What to solder, where something is wrong. */
function ToDo({ at: { spelled, proof }, wires }: Wired) {
  if (proof.believed.length === 0) return null;
  return (
    <>
      <h2>{isUnlisted(proof.believed) ? "What now" : "To mend it"}</h2>
      {mendLines(spelled, wires, proof.believed).map((text) => (
        <p key={text} class="move">
          {text}
        </p>
      ))}
      {isSoldered(proof.believed) && (
        <ul class="cautions">
          <li>Out of everything, at both ends, before it is opened.</li>
          <li>Fresh air and something before your eyes; tin spits, and the iron stays hot.</li>
        </ul>
      )}
    </>
  );
}

/** The ways on from here. Where ears are not sure, a meter is. */
function Onward({ at: { held, lead, proof } }: Pick<Wired, "at">) {
  const begin = (next: Chosen) => held.change((page) => proving(page, next, held.edges.now()));
  const anew = () => begin(lead);
  const unlisted = isUnlisted(proof.believed);
  const byMeter = (proof.state === "unsure" || unlisted) && lead.by !== "meter";
  return (
    <div class="foot">
      {byMeter && (
        <button type="button" class="main" onClick={() => begin({ ...lead, by: "meter" })}>
          Settle it with a multimeter
        </button>
      )}
      {proof.believed.length > 0 && (
        <button
          type="button"
          class={proof.state === "wrong" && !byMeter ? "main" : "say"}
          onClick={anew}
        >
          {unlisted ? "Check again" : "Done, check again"}
        </button>
      )}
      <button type="button" class={proof.state === "healthy" ? "main" : "say"} onClick={anew}>
        {lead.unknown ? "Tell another with these ends" : "Another lead of the same kind"}
      </button>
      <button
        type="button"
        class="say"
        onClick={() => held.show({ screen: "prove", lead: { kind: lead.kind } })}
      >
        Measure another way
      </button>
    </div>
  );
}

/** What nothing on offer tells from what is named. */
function Alike({ at: { spelled, proof } }: Pick<Wired, "at">) {
  const others = othersOf(proof).map((fault) => leadFaultWords(spelled, fault));
  if (others.length === 0) return null;
  return (
    <>
      <h2>Nothing here tells it from</h2>
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
  if (!lead.unknown) return null;
  const others = candidatesFor(lead, derived.happenings).filter(
    ({ kind, probability }) => kind !== lead.kind && probability >= named,
  );
  if (others.length === 0) return null;
  return (
    <>
      <h2>It may also be</h2>
      <ul>
        {others.map(({ kind, probability, fault }) => (
          <li key={kind}>
            {`${english.patching.kinds[kind].name}${fault ? `, where ${leadFaultWords(leadPins(kind), fault)}` : ""} (${inHundred(english, probability)})`}
          </li>
        ))}
      </ul>
    </>
  );
}
