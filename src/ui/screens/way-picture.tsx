import { placeName } from "#core/report/names.ts";
import { sentence } from "#core/report/phrases.ts";
import { standInFor } from "#core/rig/arranged.ts";
import { chainTo, isAt, type Link } from "#core/rig/chain.ts";
import type { Effect } from "#core/rig/effect.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { ChainPicture } from "#ui/parts/chain-picture.tsx";
import { placeAlong } from "#ui/parts/chain-place.ts";
import { effectAt, effectWords } from "#ui/parts/fault-effect.ts";
import { useWords } from "#ui/words/use-words.ts";

interface Props {
  readonly rig: BuiltRig;
  readonly position: string;
  readonly fault?: RigFault;
  /** A place to flag, with nothing known to be wrong there. */
  readonly place?: string;
  /** What the way does with nothing broken, where that is not straight. */
  readonly own?: Effect;
}

/** The way to a position, with what a fault does to it, in lanes and in words. */
export function WayPicture({ rig, position, fault, place, own }: Props) {
  const { language, verdict } = useWords();
  const links = chainTo(rig, position);
  const effect = fault ? effectAt(rig, position, fault) : own;
  const words = effect && effectWords(language, effect);
  const along = fault
    ? placeAlong(rig, links, fault)
    : (linkOf(links, place) ?? firstLead(links, own));
  const nameOf = ({ part: id, socket, kind }: Link) => {
    if (kind === "listener") return placeName(language, rig, id);
    const good = id.startsWith(standInFor(""));
    const own = language.names.alone(good ? id.slice(standInFor("").length) : id);
    const part = good ? verdict.good(own) : own;
    const long = part.length + (socket?.length ?? 0) > longest;
    return socket === undefined || kind === "laptop" || long ? part : `${part}, ${socket}`;
  };
  return (
    <figure class="way">
      <ChainPicture
        links={links}
        nameOf={nameOf}
        {...(along !== undefined && { wrong: { effect: effect ?? "straight", along } })}
      />
      {words && <figcaption>{sentence(words)}</figcaption>}
    </figure>
  );
}

/** Letters of a name and its socket that stand beside their neighbours. */
const longest = 20;

/** The middle of the first lead, for what a patch does by itself. */
function firstLead(links: readonly Link[], own: Effect | undefined): number | undefined {
  const at = links.findIndex(({ family }) => family === "lead");
  return own === undefined || at < 0 ? undefined : at + 0.5;
}

/** The middle of the link that a place belongs to: a part, or one socket of it. */
function linkOf(links: readonly Link[], place = ""): number | undefined {
  const at = links.findIndex(({ part }) => isAt(part, place));
  return at < 0 ? undefined : at + 0.5;
}
