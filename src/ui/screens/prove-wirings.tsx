import { untriedBy } from "#core/proving/readings-left.ts";
import { type Wire, wiringOf } from "#core/proving/wiring.ts";
import { type DrawnWire, LeadDrawing } from "#ui/parts/lead-drawing.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { isUnlisted, leadFaultWords } from "./prove-mend.ts";
import { ohmsWords } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";

type Props = AtProving & { readonly wires: readonly Wire[] };

/** Pin to pin: as it is meant, and where it is not so, beside that as it is. */
export function ProveWirings({ spelled, derived, proof, lead, wires }: Props) {
  const words = useWords();
  const { meant, asMeant, asItIs, itIsNow, stopped, dotted } = words.prove.result;
  const drawn = drawnBy(words);
  const wide = useWide(42);
  const { rig } = derived.model;
  const untried = lead.by === "meter" ? untriedBy(derived, proof) : () => false;
  if (proof.believed.length === 0 || isUnlisted(proof.believed))
    return (
      <div class="wirings">
        <LeadDrawing spelled={spelled} wires={wires.map(drawn)} wide={wide} label={meant} />
      </div>
    );
  const faults = proof.believed.map((fault) => leadFaultWords(words, spelled, fault));
  const now = wires.map((wire): DrawnWire => {
    const unread = wire.state === "as intended" && untried(wire);
    return unread ? { ...drawn(wire), look: "untried" } : drawn(wire);
  });
  return (
    <div class="wirings">
      <figure>
        <figcaption>{asMeant}</figcaption>
        <LeadDrawing
          spelled={spelled}
          wires={wiringOf(rig, []).map(drawn)}
          wide={wide}
          label={meant}
        />
      </figure>
      <figure>
        <figcaption>{asItIs}</figcaption>
        <LeadDrawing spelled={spelled} wires={now} wide={wide} label={itIsNow(faults)} />
        {proof.untested.length > 0 && (
          <p class="dim">
            {now.some(({ look }) => look === "untried") ? `${dotted} ${stopped}` : stopped}
          </p>
        )}
      </figure>
    </div>
  );
}

const drawnBy =
  (words: Words) =>
  ({ from, to, state, instead, ohms }: Wire): DrawnWire => ({
    from: instead ?? from,
    to,
    look: state,
    ...(state === "resistive" && ohms !== undefined ? { label: ohmsWords(words, ohms) } : {}),
  });
