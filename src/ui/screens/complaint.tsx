import type { Rig } from "#core/rig/rig.ts";
import { rigIn } from "#core/session/log.ts";
import { noisesIn } from "#core/session/noises.ts";
import { useWords } from "#ui/words/use-words.ts";
import { ComplaintSaid } from "./complaint-said.tsx";
import { ComplaintOthers, ComplaintSeat } from "./complaint-seats.tsx";
import { type AtComplaint, isOneSided, outcomeOf, stepAfter } from "./complaint-state.ts";
import type { Step, Told } from "./complaint-told.ts";
import { ComplaintFeed, ComplaintListeners, ComplaintWorn } from "./complaint-where.tsx";
import { Heading } from "./frame.tsx";
import { begun, entered, type Page, type View } from "./page.ts";
import type { Held } from "./use-page.ts";

interface Props {
  readonly held: Held;
  readonly told: Told;
}

/** One complaint as a way in: what is said, what is known of the rig, who else hears it; one question at a time. */
export function ComplaintScreen({ held, told }: Props) {
  const { language, complaint } = useWords();
  const { page, edges, show, change } = held;
  const inHand = page.seed === undefined ? rigIn(page.log) : undefined;
  const step = stepAfter(told, inHand) ?? "said";
  const tell = (more: Told) => {
    const next = { ...told, ...more };
    if (stepAfter(next, inHand) !== undefined) show({ screen: "complaint", told: next });
    else change((one) => complained(one, next, inHand, edges.now()));
  };
  return (
    <section class="complaint" key={step}>
      {told.said && (
        <p class="they-say">
          {complaint.quoted(told.said.map((one) => language.complaints.said[one]))}
        </p>
      )}
      <Heading>{complaint.questions[step]}</Heading>
      <Asked step={step} told={told} inHand={inHand} tell={tell} />
      <MeOrGear told={told} />
    </section>
  );
}

/** The complaint in the log, and the screen of whoever complains. */
function complained(page: Page, told: Told, inHand: Rig | undefined, at: number): Page {
  const { rig, position, entries } = outcomeOf(told, inHand);
  const from = rig === undefined ? page : begun(page, rig, undefined, at);
  return {
    ...entries.reduce((sum, said) => entered(sum, said, at), from),
    view: firstView(position, told),
  };
}

/** Of a noise, where it comes in; of all else, what the ears tell. */
function firstView(position: string, { said = [] }: Told): View {
  const there: View = { screen: "position", position };
  const [noise, another] = noisesIn(said);
  return noise !== undefined && another === undefined
    ? { screen: "noise", position, noise }
    : there;
}

function Asked({ step, ...at }: AtComplaint & { readonly step: Step }) {
  switch (step) {
    case "said":
      return <ComplaintSaid {...at} />;
    case "feed":
      return <ComplaintFeed {...at} />;
    case "worn":
      return <ComplaintWorn {...at} />;
    case "listeners":
      return <ComplaintListeners {...at} />;
    case "seat":
      return <ComplaintSeat {...at} />;
    case "others":
      return <ComplaintOthers {...at} />;
  }
}

/** Which test tells whether it is the listener or the gear, as soon as one side is complained of. */
function MeOrGear({ told }: { readonly told: Told }) {
  const { meOrGear } = useWords().language.complaints;
  if (!isOneSided(told)) return null;
  return (
    <p class="me-or-gear">{told.worn === "in-ears" ? meOrGear.inEars : meOrGear.headphones}</p>
  );
}
