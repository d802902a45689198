import { useState } from "preact/hooks";
import { example } from "#core/rig/rigs.ts";
import { lastToTake, rigIn, titleOf } from "#core/session/log.ts";
import { LeadPicture, WrongPicture } from "#ui/parts/job-pictures.tsx";
import { useFirstWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { goingOn } from "./page.ts";
import { Everyone } from "./start-everyone.tsx";
import { Job } from "./start-job.tsx";
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
    [start.hear, () => show({ screen: "listen", rig: example })],
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
  const unnamed = page.seed === undefined ? start.rigName(rig.name) : start.noGear;
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
        {titleOf(page.log).name ?? unnamed}
        {lastToTake(page.log) === undefined ? `, ${start.nothingHeard}` : ""}
      </p>
    </section>
  );
}
