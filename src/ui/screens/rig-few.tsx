import type { ComponentChildren } from "preact";
import { positionCopied } from "#core/drawing/copying.ts";
import { type PlugEnd, socketAt } from "#core/drawing/edited.ts";
import { isLead } from "#core/drawing/hanging.ts";
import { positionMoved } from "#core/drawing/names.ts";
import { ownOf } from "#core/drawing/removing.ts";
import { isFed } from "#core/rig/reach.ts";
import type { Meant } from "#ui/parts/rig-keys.ts";
import { useWords } from "#ui/words/use-words.ts";
import { endAt } from "./rig-dragging.ts";
import { type AtRig, removal } from "./rig-edit.ts";
import type { RigDoing } from "./rig-view.ts";

interface Of {
  readonly at: AtRig;
}

interface ActionProps {
  readonly onPress: () => void;
  readonly children: ComponentChildren;
}

const Action = ({ onPress, children }: ActionProps) => (
  <li>
    <button type="button" class="say" onClick={onPress}>
      {children}
    </button>
  </li>
);

/** What may be done to a position and what is worn there. */
export function PositionActions({
  at,
  position,
  part,
}: Of & { readonly position: string; readonly part: string }) {
  const { rig: words, language } = useWords();
  const chosen: Meant = { position };
  const between = ownOf(at.rig, part).filter((id) => id !== part);
  const seats = at.rig.positions;
  return (
    <ul class="rig-choices">
      <Action onPress={() => at.choose(chosen, { do: "name" })}>{words.name}</Action>
      <Action onPress={() => at.edit((rig) => positionCopied(rig, position), chosen)}>
        {words.copy}
      </Action>
      <Ends at={at} chosen={chosen} part={part} />
      <Action onPress={() => at.choose(chosen, { do: "change" })}>{words.change}</Action>
      {between.map((id) => (
        <Action key={id} onPress={() => at.choose({ part: id })}>
          {`${words.ownWay}: ${language.names.alone(id)}`}
        </Action>
      ))}
      {seats[0]?.id !== position && (
        <Action onPress={() => at.edit((rig) => positionMoved(rig, position, -1), chosen)}>
          {words.earlier}
        </Action>
      )}
      {seats.at(-1)?.id !== position && (
        <Action onPress={() => at.edit((rig) => positionMoved(rig, position, 1), chosen)}>
          {words.later}
        </Action>
      )}
      <Action onPress={() => at.edit((rig) => removal(rig, chosen))}>{words.remove}</Action>
    </ul>
  );
}

/** What may be done to a box, a lead, an adapter. */
export function PartActions({ at, part }: Of & { readonly part: string }) {
  const { rig: words } = useWords();
  const { built } = at;
  const chosen: Meant = { part };
  const { sockets } = built.part(part);
  const used = new Set(
    built.plugged.flatMap(({ into, socket }) => (into === part ? [socket] : [])),
  );
  const free = sockets.some(({ name, side }) => side !== "in" && !used.has(name));
  const unfed = sockets.some(({ side }) => side === "in") && !isFed(built, part);
  const doing = (what: Exclude<RigDoing["do"], "re-plug" | "between">) => () =>
    at.choose(chosen, { do: what });
  return (
    <ul class="rig-choices">
      <Action onPress={doing("name")}>{words.name}</Action>
      {free && <Action onPress={doing("put")}>{words.put}</Action>}
      {unfed && <Action onPress={doing("source")}>{words.source}</Action>}
      {isLead(built, part) && <Action onPress={doing("lead")}>{words.otherLead}</Action>}
      <Ends at={at} chosen={chosen} part={part} />
      <Action onPress={doing("change")}>{words.change}</Action>
      <Action onPress={() => at.edit((rig) => removal(rig, chosen))}>
        <Removal at={at} part={part} />
      </Action>
    </ul>
  );
}

/** What goes along with a part is said before it goes. */
function Removal({ at, part }: Of & { readonly part: string }) {
  const { rig: words } = useWords();
  const after = removal(at.rig, { part });
  const left = "rig" in after ? after.rig.positions.length : at.rig.positions.length;
  const gone = at.rig.positions.length - left;
  return <>{gone === 0 ? words.remove : words.removeWith(gone)}</>;
}

/** Each plug of a thing, to be put elsewhere; and before what stands in an output, something in the way. */
function Ends({ at, chosen, part }: Of & { readonly chosen: Meant; readonly part: string }) {
  const { marks, rig: words } = useWords();
  const { plugs } = at.built.part(part);
  return (
    <>
      {plugs.map((plug) => {
        const end: PlugEnd = { part, plug: plug.name };
        const own = endAt(at.built, end);
        const what =
          plugs.length === 1 ? words.plug(plug) : `${words.plug(plug)} (${marks.plug(plug.name)})`;
        return (
          <Action key={plug.name} onPress={() => at.choose(chosen, { do: "re-plug", end })}>
            {own
              ? words.rePlugEnd(what, words.at(own.socket, own.into))
              : words.looseEnd(what, part)}
          </Action>
        );
      })}
    </>
  );
}

/** What may be done to a plug. */
export function EndActions({ at, end }: Of & { readonly end: PlugEnd }) {
  const { rig: words } = useWords();
  const chosen: Meant = { end };
  const own = endAt(at.built, end);
  const socket = own && socketAt(at.built, own);
  return (
    <ul class="rig-choices">
      <Action onPress={() => at.choose(chosen, { do: "re-plug", end })}>{words.rePlug}</Action>
      {socket && socket.side !== "in" && (
        <Action onPress={() => at.choose(chosen, { do: "between", end })}>{words.between}</Action>
      )}
      {own && (
        <Action onPress={() => at.edit((rig) => removal(rig, chosen), { part: own.into })}>
          {words.pull}
        </Action>
      )}
    </ul>
  );
}
