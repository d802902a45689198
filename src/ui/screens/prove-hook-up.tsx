import type { Method } from "#core/proving/choice.ts";
import { leadId, provedAt } from "#core/proving/lead-rig.ts";
import type { Connection } from "#core/rig/rig.ts";
import { MethodPicture } from "#ui/parts/method-picture.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Cautions } from "./cautions.tsx";
import { Heading } from "./frame.tsx";
import { LoadBox } from "./prove-load-box.tsx";
import { endOf } from "./prove-names.ts";
import type { AtProving } from "./prove-work.tsx";
import { WayPicture } from "./way-picture.tsx";

/** How the lead is plugged in, before anything sounds. */
export function ProveHookUp({ held, derived, lead, spelled }: AtProving) {
  const { view } = held.page;
  const words = useWords();
  if (view.screen !== "prove") return null;
  const { titles, compare, plugged } = words.proveBench;
  const { rig } = derived;
  return (
    <section class="prove">
      <Tape>{words.language.patching.kinds[lead.kind].name}</Tape>
      <Heading>{titles[lead.by]}</Heading>
      {lead.by === "ear" ? (
        <WayPicture rig={derived.model.rig} position={provedAt} place={leadId} />
      ) : (
        <MethodPicture by={lead.by} />
      )}
      <ul class="hook-up">
        {rig.plugged.map((end) => (
          <li key={`${end.part} ${end.plug}`}>{pluggedWords(words, end, spelled, lead.by)}</li>
        ))}
      </ul>
      {lead.by === "load box" && <LoadBox {...farOf(rig.plugged, spelled)} />}
      {isMeasured(lead.by) && <p class="hint">{compare}</p>}
      {lead.by === "ear" && <Cautions bench={false} />}
      <div class="foot">
        <button
          type="button"
          class="main"
          onClick={() => held.show({ ...view, lead: { ...view.lead, plugged: true } })}
        >
          {plugged}
        </button>
      </div>
    </section>
  );
}

const isMeasured = (by: Method): boolean => by === "return" || by === "load box";

/** Where a plug goes: any gear of that sort will do. */
function pluggedWords(
  { marks, proveBench: words }: Words,
  { part, plug, into, socket }: Connection,
  spelled: AtProving["spelled"],
  by: Method,
): string {
  if (part === "headphones") return words.headphones;
  if (into === leadId) return words.goodLead;
  const { letter, mark } = endOf(spelled, plug);
  const own = words.plug(letter, mark && marks.plug(mark));
  const what = part === leadId ? own : words.thatLead;
  const side = sideOf(socket);
  if (into !== "source") return words.far[by](what, side);
  return (by === "ear" ? words.fromPlayer : words.fromCard)(what, side);
}

function sideOf(socket: string): "left" | "right" | undefined {
  if (socket.includes("left")) return "left";
  return socket.includes("right") ? "right" : undefined;
}

/** The plugs that go into the load box. */
function farOf(plugged: readonly Connection[], { west, east }: AtProving["spelled"]) {
  const there = plugged.filter(({ into }) => into === "load box");
  const end = [...west, ...east].find(({ name }) => name === there[0]?.plug);
  return { plug: end?.kind ?? ("TRS" as const), count: there.length };
}
