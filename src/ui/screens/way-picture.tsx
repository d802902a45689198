import { chainTo, type Link } from "#core/rig/chain.ts";
import type { BuiltRig } from "#core/rig/rig.ts";
import type { RigFault } from "#core/rig/rig-faults.ts";
import { ChainPicture } from "#ui/parts/chain-picture.tsx";
import { placeAlong } from "#ui/parts/chain-place.ts";
import { effectAt, effectWords } from "#ui/parts/fault-effect.ts";
import { placeName } from "#ui/parts/names.ts";
import { sentence } from "#ui/parts/phrases.ts";

interface Props {
  readonly rig: BuiltRig;
  readonly position: string;
  readonly fault?: RigFault | undefined;
}

/** The way to a position, with what a fault does to it, in lanes and in words. */
export function WayPicture({ rig, position, fault }: Props) {
  const links = chainTo(rig, position);
  const effect = fault && effectAt(rig, position, fault);
  const words = effect && effectWords(effect);
  const wrong = fault && effect && { effect, along: placeAlong(rig, links, fault) };
  const nameOf = ({ part, socket, kind }: Link) => {
    if (kind === "listener") return placeName(rig, part);
    return socket === undefined || kind === "laptop" ? part : `${part}, ${socket}`;
  };
  return (
    <figure class="way">
      <ChainPicture links={links} nameOf={nameOf} {...(wrong && { wrong })} />
      {words && <figcaption>{sentence(words)}</figcaption>}
    </figure>
  );
}
