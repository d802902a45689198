import { plugAt, socketAt } from "#core/drawing/edited.ts";
import type { Plug, Socket } from "#core/parts/part.ts";
import type { BuiltRig, Connection } from "#core/rig/rig.ts";
import { useWords } from "#ui/words/use-words.ts";
import { PlugPicture } from "./plug-picture.tsx";
import { endKey, keyOf, spotKey } from "./rig-keys.ts";
import { SocketPicture } from "./socket-picture.tsx";

interface Props {
  readonly rig: BuiltRig;
  readonly ends: readonly Connection[];
  /** Which side the box is on. */
  readonly edge: "near" | "far";
}

/** Plugs in the sockets of one box, one under the other: what each is, drawn and in words. */
export const RigEnds = ({ rig, ends, edge }: Props) => (
  <span class={`rig-ends ${edge}`}>
    {ends.map((end) => (
      <RigEnd key={endKey(end)} rig={rig} end={end} edge={edge} />
    ))}
  </span>
);

function RigEnd({ rig, end, edge }: Omit<Props, "ends"> & { readonly end: Connection }) {
  const { marks, rig: words, language } = useWords();
  const [plug, socket] = [plugAt(rig, end), socketAt(rig, end)];
  if (plug === undefined || socket === undefined) return null;
  const what = words.plug(plug);
  return (
    <button
      type="button"
      class="rig-end"
      data-thing={keyOf({ end: { part: end.part, plug: end.plug } })}
      data-spot={spotKey(end)}
      aria-label={`${words.end(what, end.socket, end.into)}, ${language.names.alone(end.part)}`}
    >
      <PlugInSocket plug={plug} socket={socket} facing={edge === "near" ? "west" : "east"} />
      <span class="end-words">
        <span>{marks.socket(end.socket)}</span>
        <span class="what">{words.plugBriefly(plug)}</span>
      </span>
    </button>
  );
}

interface PictureProps {
  readonly plug: Plug;
  readonly socket: Socket;
  readonly facing: "west" | "east";
}

/** A plug as it stands in its socket; of a jack the ring that parts its contacts is still seen. */
const PlugInSocket = ({ plug, socket, facing }: PictureProps) => (
  <svg class="end-drawing" viewBox="0 0 60 40" aria-hidden="true">
    <SocketPicture
      kind={socket.kind}
      size={socket.size}
      at={[facing === "west" ? 10 : 50, 20]}
      scale={0.55}
      used
    />
    <PlugPicture
      kind={plug.kind}
      size={plug.size}
      tip={[facing === "west" ? 12 : 48, 20]}
      facing={facing}
      scale={0.48}
    />
  </svg>
);

/** The plugs of a lead that stand in nothing. */
export function LooseEnds({ rig, part }: { readonly rig: BuiltRig; readonly part: string }) {
  const { marks, rig: words } = useWords();
  const plugged = rig.plugged.filter((end) => end.part === part).map(({ plug }) => plug);
  const loose = rig.part(part).plugs.filter(({ name }) => !plugged.includes(name));
  return (
    <>
      {loose.map((plug) => (
        <button
          key={plug.name}
          type="button"
          class="rig-end loose"
          data-thing={keyOf({ end: { part, plug: plug.name } })}
          aria-label={words.looseEnd(`${words.plug(plug)} (${marks.plug(plug.name)})`, part)}
        >
          <svg class="end-drawing" viewBox="0 0 60 40" aria-hidden="true">
            <PlugPicture
              kind={plug.kind}
              size={plug.size}
              tip={[48, 20]}
              facing="east"
              scale={0.48}
            />
          </svg>
          <span class="end-words">
            <span>{marks.plug(plug.name)}</span>
            <span class="what">{`${words.plugBriefly(plug)}, ${words.loose}`}</span>
          </span>
        </button>
      ))}
    </>
  );
}

/** The free sockets of a box as dots: where a plug may be dropped. What they are called is said where one is chosen. */
export function FreeSockets({ rig, part }: { readonly rig: BuiltRig; readonly part: string }) {
  const { rig: words } = useWords();
  const used = new Set(rig.plugged.flatMap(({ into, socket }) => (into === part ? [socket] : [])));
  const free = rig.part(part).sockets.filter(({ name }) => !used.has(name));
  if (free.length === 0) return null;
  return (
    <span class="free">
      {free.slice(0, mostDots).map(({ name, kind, size }) => (
        <span key={name} class="free-socket" data-spot={spotKey({ into: part, socket: name })}>
          <svg viewBox="-20 -20 40 40" aria-hidden="true">
            <SocketPicture kind={kind} size={size} at={[0, 0]} />
          </svg>
        </span>
      ))}
      <span class="note">{words.free(free.length)}</span>
    </span>
  );
}

const mostDots = 12;
