import { useEffect, useMemo, useRef } from "preact/hooks";
import { type MatrixTold, meantOf } from "#core/proving/lead-matrix.ts";
import { provedAt } from "#core/proving/lead-rig.ts";
import { Needed } from "./position-screen.tsx";
import { ProveHookUp } from "./prove-hook-up.tsx";
import { ProveResult } from "./prove-result.tsx";
import type { AtProving } from "./prove-work.tsx";
import type { Ready } from "./ready.ts";
import { useFetched } from "./use-fetched.ts";

type Props = AtProving & { readonly ready: Ready; readonly plugged: boolean };

/**
 * A lead out of a sound card and back in: plugged, measured, and what comes of it. What measures stays in its place from lead to lead, since it holds
 * the good one that the others are measured against.
 */
export function ProveReturn(at: Props) {
  const { held, derived, lead, proof, plugged } = at;
  const screens = useFetched(true, () => import("./measuring-screens.tsx"), held.change);
  const meant = useMemo(() => meantOf(lead.kind, lead.by), [lead.kind, lead.by]);
  const { next } = proof;
  const asks = plugged && next?.next === "ask" && next.asked.check === "matrix";
  const section = useRef<HTMLElement>(null);
  // Its heading came while it was hidden, or has been there since the last lead.
  useEffect(() => {
    if (!asks) return;
    scrollTo(0, 0);
    section.current?.querySelector("h1")?.focus({ preventScroll: true });
  }, [asks]);
  const onMatrix = (told: MatrixTold) => {
    const asked = { check: "matrix", position: provedAt } as const;
    held.enter({ entry: "finding", finding: { asked, ...told } });
  };
  return (
    <>
      <section class="prove measuring" hidden={!asks} ref={section}>
        {screens && (
          <screens.MeasuringScreens
            held={held}
            onMatrix={onMatrix}
            meant={meant}
            after={derived.happenings.length > 0 ? "the same" : "another"}
          />
        )}
      </section>
      {!asks && <Beside key={held.page.log.length} {...at} />}
    </>
  );
}

/** What is to be seen while nothing is measured. */
function Beside({ ready, plugged, ...at }: Props) {
  if (at.proof.next === undefined) return <ProveResult {...at} />;
  if (!plugged) return <ProveHookUp {...at} />;
  const { advice } = at.derived.standing(provedAt);
  return <Needed held={at.held} ready={ready} position={provedAt} advice={advice} />;
}
