import { useMemo } from "preact/hooks";
import { type Proof, proofOf } from "#core/proving/proof.ts";
import type { Derived } from "#core/session/derive.ts";
import { leadPins } from "#ui/parts/lead-pins.ts";
import type { Spelled } from "#ui/parts/pins.ts";
import type { Chosen } from "./prove-begun.ts";
import { ProveByEar } from "./prove-by-ear.tsx";
import { ProveHookUp } from "./prove-hook-up.tsx";
import { ProveMeter } from "./prove-meter.tsx";
import { ProveResult } from "./prove-result.tsx";
import { ProveReturn } from "./prove-return.tsx";
import { leadIn } from "./prove-said.ts";
import type { Ready } from "./ready.ts";
import type { Session } from "./use-session.ts";

/** A lead that is being proved. */
export interface AtProving {
  readonly held: Session;
  readonly derived: Derived;
  readonly lead: Chosen;
  readonly spelled: Spelled;
  readonly proof: Proof;
}

interface Props {
  readonly held: Session;
  readonly ready: Ready;
}

/** What the lead of the log needs now: a reading, a sound and a question, or nothing more. */
export function ProveWork({ held, ready }: Props) {
  const { derived } = ready;
  const lead = leadIn(derived.rig);
  if (lead?.kind === undefined || lead.by === undefined) return null;
  return <Proving held={held} ready={ready} lead={{ ...lead, kind: lead.kind, by: lead.by }} />;
}

function Proving({ held, ready, lead }: Props & Pick<AtProving, "lead">) {
  const { derived } = ready;
  const proof = useMemo(() => proofOf(derived, lead.by), [derived, lead.by]);
  const spelled = useMemo(() => leadPins(lead.kind), [lead.kind]);
  const at = { held, derived, lead, spelled, proof };
  const { next } = proof;
  const key = held.page.log.length;
  if (next?.next === "read") return <ProveMeter key={key} {...at} reading={next.reading} />;
  const plugged = isPlugged(held);
  if (lead.by === "return" || lead.by === "load box")
    return <ProveReturn {...at} ready={ready} plugged={plugged} />;
  if (next === undefined) return <ProveResult key={key} {...at} />;
  return plugged ? <ProveByEar key={key} {...at} ready={ready} /> : <ProveHookUp {...at} />;
}

const isPlugged = ({ page: { view } }: Session): boolean =>
  view.screen === "prove" && view.lead.plugged === true;
