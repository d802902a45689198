import { useState } from "preact/hooks";
import { example } from "#core/rig/rigs.ts";
import { type StartKey, type StartWords, startKeys } from "#core/rig/start-words.ts";
import { EveryonePicture } from "#ui/parts/job-pictures.tsx";
import { useFirstWords } from "#ui/words/use-words.ts";
import { begun } from "./page.ts";
import { Job } from "./start-job.tsx";
import type { Held } from "./use-page.ts";

/** Every pair of headphones, at a rig that is most like theirs; the last of them is an evening of our own making. */
export function Everyone({ held }: { readonly held: Held }) {
  const { start, starts } = useFirstWords();
  const [fetching, setFetching] = useState(false);
  const press = (key: StartKey) => {
    if (fetching) return;
    setFetching(true);
    void begin(held, key, starts).then(() => setFetching(false));
  };
  return (
    <>
      <Job picture={<EveryonePicture />} tape={<h2 class="tape large">{start.everyone}</h2>}>
        <p id="most-like">{start.everyoneMore}</p>
      </Job>
      <ul class="rigs" aria-labelledby="most-like">
        {startKeys.map((key) => (
          <li key={key}>
            <button type="button" class="tape" aria-disabled={fetching} onClick={() => press(key)}>
              {starts.starts[key].name}
            </button>
          </li>
        ))}
        <li>
          <button
            type="button"
            class="tape"
            aria-disabled={fetching}
            onClick={() => !fetching && held.begin(example)}
          >
            {start.rigName(example.name)}
          </button>
        </li>
      </ul>
    </>
  );
}

/** Begins at a ready-made rig, which is fetched for it, unless something else was pressed meanwhile; one of one's own is drawn first. */
async function begin(held: Held, key: StartKey, words: StartWords): Promise<void> {
  const { page, edges, change } = held;
  try {
    const { starts } = await import("#core/rig/starts.ts");
    const rig = starts.find((one) => one.key === key)?.make(words);
    change((one) => {
      if (rig === undefined || one.view !== page.view) return one;
      const next = begun(one, rig, undefined, edges.now());
      return key === "draw your own" ? { ...next, view: { screen: "rig" } } : next;
    });
  } catch {
    change((one) => ({ ...one, notice: "not loaded" }));
  }
}
