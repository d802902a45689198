import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { type StartKey, type StartWords, startKeys } from "#core/rig/start-words.ts";
import { lastToTake, rigIn } from "#core/session/log.ts";
import { EveryonePicture, LeadPicture, WrongPicture } from "#ui/parts/job-pictures.tsx";
import { useFirstWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { goingOn } from "./page.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
}

/** The first screen: what this is, three jobs, a rig to try, and the last session to go on with. */
export function Start({ held }: Props) {
  const { start } = useFirstWords();
  return (
    <div class="start">
      <Heading>Leftwright</Heading>
      <p class="lead">{start.lead}</p>
      <GoOn held={held} />
      <Everyone held={held} />
      <Job
        picture={<WrongPicture />}
        tape={
          <button
            type="button"
            class="tape large"
            onClick={() => held.show({ screen: "complaint", told: {} })}
          >
            {start.wrong}
          </button>
        }
      >
        <p>{start.wrongMore}</p>
      </Job>
      <Job
        picture={<LeadPicture />}
        tape={
          <button
            type="button"
            class="tape large"
            onClick={() => held.show({ screen: "prove", lead: {} })}
          >
            {start.prove}
          </button>
        }
      >
        <p>{start.proveMore}</p>
      </Job>
      <Bench held={held} />
      <Besides held={held} />
    </div>
  );
}

interface JobProps {
  readonly picture: ComponentChildren;
  readonly tape: ComponentChildren;
  readonly children: ComponentChildren;
}

/** One job: a strip of tape over the lanes that show it. */
const Job = ({ picture, tape, children }: JobProps) => (
  <section class="job">
    <div class="over">{tape}</div>
    {picture}
    {children}
  </section>
);

/** Every pair of headphones, at a rig that is most like theirs; the last of them is an evening of our own making. */
function Everyone({ held }: Props) {
  const { start, starts } = useFirstWords();
  return (
    <>
      <Job picture={<EveryonePicture />} tape={<h2 class="tape large">{start.everyone}</h2>}>
        <p id="most-like">{start.everyoneMore}</p>
      </Job>
      <ul class="rigs" aria-labelledby="most-like">
        {startKeys.map((key) => (
          <li key={key}>
            <button type="button" class="tape" onClick={() => begin(held, key, starts)}>
              {starts.starts[key].name}
            </button>
          </li>
        ))}
        <li>
          <button type="button" class="tape" onClick={() => held.begin(example)}>
            {start.rigName(example.name)}
          </button>
        </li>
      </ul>
    </>
  );
}

const [example = straightIn] = builtInRigs;

/** Begins at a ready-made rig, which is fetched for it; one of one's own is drawn first. */
async function begin(held: Held, key: StartKey, words: StartWords): Promise<void> {
  try {
    const { starts } = await import("#core/rig/starts.ts");
    const start = starts.find((one) => one.key === key);
    if (start === undefined) return;
    held.begin(start.make(words));
    if (key === "draw your own") held.show({ screen: "rig" });
  } catch {
    held.change((one) => ({ ...one, notice: "not loaded" }));
  }
}

/** A rig without gear, by its number or by chance. */
function Bench({ held: { bench } }: Props) {
  const { start } = useFirstWords();
  const [number, setNumber] = useState("");
  const chosen = number === "" ? undefined : Number(number);
  return (
    <section class="offer">
      <button
        type="button"
        class="tape yellow"
        aria-describedby="offer"
        onClick={() => bench(chosen)}
      >
        {start.bench}
      </button>
      <p id="offer">{start.benchMore}</p>
      <label class="number">
        {start.number}
        <input
          type="number"
          inputMode="numeric"
          min="0"
          step="1"
          placeholder={start.byChance}
          value={number}
          onInput={({ currentTarget }) =>
            setNumber(currentTarget.value.replace(/\D/g, "").slice(0, 9))
          }
        />
      </label>
    </section>
  );
}

/** What is less than a whole job. */
function Besides({ held }: Props) {
  const { start } = useFirstWords();
  const { show } = held;
  const others: readonly (readonly [string, () => void])[] = [
    [start.sessions, () => show({ screen: "sessions" })],
    [start.plan, () => show({ screen: "plan" })],
    [start.hear, () => show({ screen: "listen", rig: builtInRigs[0] ?? straightIn })],
    [start.train, () => train(held)],
    [start.measure, () => show({ screen: "measure" })],
    [start.flex, () => show({ screen: "flex" })],
    [start.sounds, () => show({ screen: "sounds" })],
    [start.soundOut, () => show({ screen: "sound out", from: { screen: "start" } })],
  ];
  return (
    <section class="besides">
      <h2>{start.besides}</h2>
      <ul>
        {others.map(([words, go]) => (
          <li key={words}>
            <button type="button" class="quiet" onClick={go}>
              {words}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** The round that was left, else a new one. */
function train({ page, edges, change, show }: Held): void {
  const training = page.training ?? { seed: edges.chance(), answered: [] };
  change((one) => ({ ...one, training }));
  show({ screen: "training" });
}

function GoOn({ held: { page, keeping, show } }: Props) {
  const { start } = useFirstWords();
  const rig = rigIn(page.log);
  if (rig === undefined) return null;
  return (
    <section class="go-on">
      <button
        type="button"
        class="tape yellow"
        onClick={() => show(goingOn(rig, keeping.position))}
      >
        {start.goOn}
      </button>
      <p>
        {page.seed === undefined ? start.rigName(rig.name) : start.noGear}
        {lastToTake(page.log) === undefined ? `, ${start.nothingHeard}` : ""}
      </p>
    </section>
  );
}
