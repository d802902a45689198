import type { Method } from "#core/proving/choice.ts";
import { leadId, provedAt } from "#core/proving/lead-rig.ts";
import type { Connection } from "#core/rig/rig.ts";
import { english } from "#core/words/english.ts";
import { MethodPicture } from "#ui/parts/method-picture.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { Cautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { LoadBox } from "./prove-load-box.tsx";
import { endWord } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";
import { WayPicture } from "./way-picture.tsx";

/** How the lead is plugged in, before anything sounds. */
export function ProveHookUp({ held, derived, lead, spelled }: AtProving) {
  const { view } = held.page;
  if (view.screen !== "prove") return null;
  const { rig } = derived;
  return (
    <section class="prove">
      <Tape>{english.patching.kinds[lead.kind].name}</Tape>
      <Heading>{headings[lead.by]}</Heading>
      {lead.by === "ear" ? (
        <WayPicture rig={derived.model.rig} position={provedAt} place={leadId} />
      ) : (
        <MethodPicture by={lead.by} />
      )}
      <ul class="hook-up">
        {rig.plugged.map((end) => (
          <li key={`${end.part} ${end.plug}`}>{pluggedWords(end, spelled, lead.by)}</li>
        ))}
      </ul>
      {lead.by === "load box" && <LoadBox {...farOf(rig.plugged, spelled)} />}
      {isMeasured(lead.by) && (
        <p class="hint">
          If you have one like it that is known to be good, plug that in first: what this one loses
          is told against it.
        </p>
      )}
      {lead.by === "ear" && <Cautions bench={false} />}
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

const isMeasured = (by: Method): boolean => by === "return" || by === "load box";

const headings: Readonly<Record<Method, string>> = {
  ear: "Put it between gear that is known to be good.",
  return: "Out of the sound card, through the lead, and back in.",
  "load box": "Out of the sound card, through the lead, into the load box.",
  meter: "Unplug it at both ends.",
};

/** Where a plug goes: any gear of that sort will do. */
function pluggedWords(
  { part, plug, into, socket }: Connection,
  spelled: AtProving["spelled"],
  by: Method,
): string {
  if (part === "headphones") return "Good headphones into the amplifier, L on the left ear.";
  if (into === leadId) return "A good lead into the socket of this one.";
  const [letter = "", mark] = endWord(spelled, plug).split(", ");
  const own = mark === undefined ? letter : `The ${mark} plug of ${letter}`;
  const what = part === leadId ? own : "That lead";
  const side = /left|right/.exec(socket)?.[0];
  if (into === "source")
    return `${what} into the ${side === undefined ? "headphone socket" : `${side} output`} of ${by === "ear" ? "what plays" : "the sound card"}.`;
  return `${what} into ${farWords[by](side)}.`;
}

const farWords: Readonly<Record<Method, (side: string | undefined) => string>> = {
  ear: (side = "stereo") => `the ${side} input of a headphone amplifier`,
  return: (side) =>
    side === undefined
      ? "the sound card's line inputs, tip to the first and ring to the second"
      : `the sound card's ${side} line input`,
  "load box": (side) => `the ${side === undefined ? "" : `${side} `}socket of the load box`,
  meter: () => "nothing",
};

/** The plugs that go into the load box. */
function farOf(plugged: readonly Connection[], { west, east }: AtProving["spelled"]) {
  const there = plugged.filter(({ into }) => into === "load box");
  const end = [...west, ...east].find(({ name }) => name === there[0]?.plug);
  return { plug: end?.kind ?? ("TRS" as const), count: there.length };
}
