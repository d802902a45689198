import { leadId, provedAt } from "#core/proving/lead-rig.ts";
import { capital } from "#core/report/phrases.ts";
import type { Connection } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { Cautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { PositionScreen } from "./position-screen.tsx";
import { endWord } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";
import type { Ready } from "./ready.ts";
import { WayPicture } from "./way-picture.tsx";

type Props = AtProving & { readonly ready: Ready };

/** A lead between gear that is known to be good: how it is plugged in, then what a position needs. */
export function ProveByEar(props: Props) {
  const { held, ready, lead } = props;
  const { view } = held.page;
  return view.screen === "prove" && view.lead.plugged ? (
    <>
      <p class="dim">{`${capital(nameOf(lead))}, between gear that is known to be good`}</p>
      <PositionScreen held={held} ready={ready} position={provedAt} />
    </>
  ) : (
    <EarHookUp {...props} />
  );
}

function EarHookUp({ held, derived: { model, rig }, lead, spelled }: Props) {
  const { view } = held.page;
  if (view.screen !== "prove") return null;
  return (
    <section class="prove">
      <Tape>{nameOf(lead)}</Tape>
      <Heading>Put it between gear that is known to be good.</Heading>
      <WayPicture rig={model.rig} position={provedAt} place={leadId} />
      <ul class="hook-up">
        {rig.plugged.map((end) => (
          <li key={`${end.part} ${end.plug}`}>{pluggedWords(end, spelled)}</li>
        ))}
      </ul>
      <Cautions bench={false} />
      <div class="foot">
        <button
          type="button"
          class="main"
          onClick={() => held.show({ ...view, lead: { ...view.lead, plugged: true } })}
        >
          It is plugged in
        </button>
      </div>
    </section>
  );
}

const nameOf = ({ kind }: AtProving["lead"]): string => english.patching.kinds[kind].name;

/** Where a plug goes: any gear of that sort will do. */
function pluggedWords(
  { part, plug, into, socket }: Connection,
  spelled: AtProving["spelled"],
): string {
  if (part === "headphones") return "Good headphones into the amplifier, L on the left ear.";
  const what = part === leadId ? endWord(spelled, plug) : "A good lead";
  if (into === leadId) return "A good lead into the socket of this one.";
  const side = /left|right/.exec(socket)?.[0];
  if (into === "source")
    return side === undefined
      ? `${what} into the headphone socket of what plays.`
      : `${what} into the ${side} output of what plays.`;
  return `${what} into the ${side ?? "stereo"} input of a headphone amplifier.`;
}
