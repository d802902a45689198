import { useState } from "preact/hooks";
import { builtInRigs, straightIn } from "#core/rig/rigs.ts";
import { lastToTake } from "#core/session/log.ts";
import { StartPicture } from "#ui/parts/start-picture.tsx";
import { useFirstWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { goingOn, rigIn } from "./page.ts";
import type { Held } from "./use-page.ts";

/** The first screen: what this is, and a rig to try. */
export function Start({ held }: { readonly held: Held }) {
  return (
    <div class="start">
      <Heading>Leftwright</Heading>
      <p class="lead">
        Finds the link that is wrong between the mixer and the ears, by what the ears hear.
      </p>
      <Bench held={held} />
      <GoOn held={held} />
      <AllSessions held={held} />
      <section class="before">
        <h2>Somebody complains</h2>
        <button
          type="button"
          class="tape"
          onClick={() => held.show({ screen: "complaint", told: {} })}
        >
          One dead ear, no voice, hollow, or hum
        </button>
      </section>
      <section class="before">
        <h2>On the bench</h2>
        <button type="button" class="tape" onClick={() => held.show({ screen: "prove", lead: {} })}>
          Prove a lead
        </button>
      </section>
      <section class="before">
        <h2>Before anything is plugged in</h2>
        <button type="button" class="tape" onClick={() => held.show({ screen: "plan" })}>
          Will it work, and which lead?
        </button>
        <button
          type="button"
          class="tape"
          onClick={() => held.show({ screen: "listen", rig: builtInRigs[0] ?? straightIn })}
        >
          Hear what faults sound like
        </button>
        <button type="button" class="tape" onClick={() => held.show({ screen: "sounds" })}>
          Test sounds, to play or take away
        </button>
        <button
          type="button"
          class="tape"
          onClick={() => held.show({ screen: "sound out", from: { screen: "start" } })}
        >
          Where the sound goes
        </button>
        <button type="button" class="tape" onClick={() => train(held)}>
          Train your ears: name the fault
        </button>
      </section>
      <section class="before">
        <h2>Measured instead of heard</h2>
        <button type="button" class="tape" onClick={() => held.show({ screen: "measure" })}>
          Measure with a sound card
        </button>
        <button type="button" class="tape" onClick={() => held.show({ screen: "flex" })}>
          Bend a lead and watch
        </button>
      </section>
      <section class="rigs">
        <h2>With the gear you have</h2>
        <ul>
          {builtInRigs.map((rig) => (
            <li key={rig.name}>
              <button type="button" class="tape" onClick={() => held.begin(rig)}>
                {rig.name}
              </button>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}

/** The round that was left, else a new one. */
function train({ page, edges, change, show }: Held): void {
  const training = page.training ?? { seed: edges.chance(), answered: [] };
  change((one) => ({ ...one, training }));
  show({ screen: "training" });
}

/** The main offer: a strip of tape over two lanes that go in straight and come out otherwise. */
function Bench({ held: { bench } }: { readonly held: Held }) {
  const [number, setNumber] = useState("");
  const chosen = number === "" ? undefined : Number(number);
  const begin = () => bench(chosen);
  return (
    <section class="offer">
      <StartPicture />
      <button type="button" class="tape yellow over" aria-describedby="offer" onClick={begin}>
        A rig to try without gear
      </button>
      <p id="offer">Something in it is wrong. Good headphones and two minutes.</p>
      <label class="number">
        rig number
        <input
          type="number"
          inputMode="numeric"
          min="0"
          step="1"
          placeholder="by chance"
          value={number}
          onInput={({ currentTarget }) =>
            setNumber(currentTarget.value.replace(/\D/g, "").slice(0, 9))
          }
        />
      </label>
    </section>
  );
}

function GoOn({ held: { page, keeping, show } }: { readonly held: Held }) {
  const rig = rigIn(page.log);
  if (rig === undefined) return null;
  return (
    <section class="go-on">
      <h2>Where you were</h2>
      <button type="button" class="tape" onClick={() => show(goingOn(rig, keeping.position))}>
        Go on with the last session
      </button>
      <p>
        {page.seed === undefined ? rig.name : "the rig without gear"}
        {lastToTake(page.log) === undefined ? ", nothing heard yet" : ""}
      </p>
    </section>
  );
}

function AllSessions({ held: { show } }: { readonly held: Held }) {
  return (
    <button type="button" class="quiet" onClick={() => show({ screen: "sessions" })}>
      {useFirstWords().allSessions}
    </button>
  );
}
