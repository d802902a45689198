import { useState } from "preact/hooks";
import { type SignalName, signalNames, signals } from "#core/signals/catalogue.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { SignalPicture } from "#ui/parts/signal-picture.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { OutCautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { Level } from "./level.tsx";
import { mutedWords } from "./play.tsx";
import { TakeAway } from "./take-away.tsx";
import type { Held } from "./use-page.ts";
import { useArrive } from "./use-place.ts";

/** Every sound that may be played to ears, played by pointing at it; and all of them as files. */
export function Sounds({ held }: { readonly held: Held }) {
  const { world, edges, page } = held;
  const words = useWords();
  const { sounds, sounding } = words;
  const { player } = edges;
  const [last, setLast] = useState<SignalName>();
  const [loop, setLoop] = useState(false);
  useArrive(held, "test sounds");
  const play = (name: SignalName) => {
    if (world.playing && name === last) return player.silence();
    setLast(name);
    held.change((one) => ({ ...one, sounded: true }));
    void player.play(name, edges.chance(), { loop });
  };
  return (
    <section class="sounds">
      <Heading>{sounds.title}</Heading>
      <p class="hint" aria-live="polite">
        {last === undefined ? sounds.hint : toHear(words, last)}
      </p>
      {world.muted && (
        <button type="button" class="play hands" onClick={player.handOff}>
          {mutedWords(sounding, world.turnedUp)}
        </button>
      )}
      <Roving label={sounds.title} kind="points signals">
        {signalNames.map((name) => (
          <button
            key={name}
            type="button"
            class={world.playing && name === last ? "point sounding-now" : "point"}
            aria-pressed={world.playing && name === last}
            disabled={world.muted}
            onClick={() => play(name)}
          >
            <SignalPicture signal={signals[name]} />
            <span>{sounds.names[name]}</span>
          </button>
        ))}
      </Roving>
      <label class="check">
        <input type="checkbox" checked={loop} onChange={() => setLoop(!loop)} />
        {sounds.loop}
      </label>
      {!page.sounded && <OutCautions />}
      <TakeAway held={held} />
      <Level held={held} />
    </section>
  );
}

function toHear({ language, sounds }: Words, name: SignalName): string {
  const { what, hear } = language.signals[name];
  return sounds.toHear(what, hear);
}
