import type { Copy } from "#offline/copy.ts";
import { useFirstWords } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";
import { useWorld } from "./use-world.ts";

/** What this device has of the program: whether it opens without a network, and how to have it among its own programs. */
export function Own({ copy }: { readonly copy: Copy }) {
  const { own } = useFirstWords();
  const { kept, installable } = useWorld(copy);
  return (
    <div class="own">
      <p>{kept ? own.kept : own.notKept}</p>
      {installable ? (
        <button type="button" class="say" onClick={copy.install}>
          {own.install}
        </button>
      ) : (
        kept && !installed() && <p class="dim">{own.byHand}</p>
      )}
    </div>
  );
}

/** Whether it was opened as one of the device's own programs. */
const installed = (): boolean => matchMedia("(display-mode: standalone)").matches;

/**
 * Says quietly that a newer version is here; nothing changes until it is asked for. Not where the page would lose something by beginning
 * anew: an answer that is not on the disk, a training round, a measurement.
 */
export function Newer({ held }: { readonly held: Held }) {
  const { page, keeping, edges, world, measuring, silence } = held;
  const { own } = useFirstWords();
  const { newer } = useWorld(edges.copy);
  const busy = world.playing || measuring || !keeping.kept || page.view.screen === "training";
  if (!newer || busy) return null;
  const take = () => {
    silence();
    edges.copy.takeNewer();
  };
  return (
    <p class="newer" role="status">
      {own.newer}{" "}
      <button type="button" class="quiet" onClick={take}>
        {own.take}
      </button>
    </p>
  );
}
