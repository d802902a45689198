import { untriedBy } from "#core/proving/readings-left.ts";
import { type Wire, wiringOf } from "#core/proving/wiring.ts";
import { type DrawnWire, LeadDrawing } from "#ui/parts/lead-drawing.tsx";
import { useWide } from "#ui/parts/use-wide.ts";
import { isUnlisted, leadFaultWords } from "./prove-mend.ts";
import { ohmsWords } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";

type Props = AtProving & { readonly wires: readonly Wire[] };

/** Pin to pin: as it is meant, and where it is not so, beside that as it is. */
export function ProveWirings({ spelled, derived, proof, lead, wires }: Props) {
  const wide = useWide(42);
  const { rig } = derived.model;
  const untried = lead.by === "meter" ? untriedBy(derived, proof) : () => false;
  if (proof.believed.length === 0 || isUnlisted(proof.believed))
    return (
      <div class="wirings">
        <LeadDrawing spelled={spelled} wires={wires.map(drawn)} wide={wide} label={asMeant} />
      </div>
    );
  const faults = proof.believed.map((fault) => leadFaultWords(spelled, fault)).join(", ");
  const now = wires.map((wire): DrawnWire => {
    const unread = wire.state === "as intended" && untried(wire);
    return unread ? { ...drawn(wire), look: "untried" } : drawn(wire);
  });
  return (
    <div class="wirings">
      <figure>
        <figcaption>as it is meant</figcaption>
        <LeadDrawing
          spelled={spelled}
          wires={wiringOf(rig, []).map(drawn)}
          wide={wide}
          label={asMeant}
        />
      </figure>
      <figure>
        <figcaption>as it is, most likely</figcaption>
        <LeadDrawing spelled={spelled} wires={now} wide={wide} label={`as it is: ${faults}`} />
        {proof.untested.length > 0 && (
          <p class="dim">
            {`${now.some(({ look }) => look === "untried") ? "Dotted: not read. " : ""}Readings stop at what is enough to open it for; check it again once it is mended.`}
          </p>
        )}
      </figure>
    </div>
  );
}

const asMeant = "wired as it is meant";

const drawn = ({ from, to, state, instead, ohms }: Wire): DrawnWire => ({
  from: instead ?? from,
  to,
  look: state,
  ...(state === "resistive" && ohms !== undefined ? { label: ohmsWords(ohms) } : {}),
});
