import { useLayoutEffect, useMemo, useRef } from "preact/hooks";
import { build, type Rig } from "#core/rig/rig.ts";
import { rigIn } from "#core/session/log.ts";
import { follow } from "#ui/parts/rig-drag.ts";
import { meantBy } from "#ui/parts/rig-keys.ts";
import { RigPicture } from "#ui/parts/rig-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { RigActions } from "./rig-actions.tsx";
import { draggingOf } from "./rig-dragging.ts";
import {
  type AtRig,
  drew,
  focusOn,
  inHand,
  letGo,
  removal,
  steppedBack,
  unrefused,
} from "./rig-edit.ts";
import { RigHead } from "./rig-head.tsx";
import { RigTray } from "./rig-tray.tsx";
import type { Held } from "./use-page.ts";

/** The rig as a picture, and what changes it: each change is an entry, so that undoing is taking entries back. */
export function RigScreen({ held }: { readonly held: Held }) {
  const rig = rigIn(held.page.log);
  return rig === undefined ? null : <Drawn held={held} rig={rig} />;
}

function Drawn({ held, rig }: { readonly held: Held; readonly rig: Rig }) {
  const { page, change, edges, show } = held;
  const words = useWords();
  const root = useRef<HTMLDivElement>(null);
  const built = useMemo(() => build(rig), [rig]);
  const picture = useMemo(() => <RigPicture rig={built} />, [built]);
  const view = page.view.screen === "rig" ? page.view : undefined;
  const at: AtRig = {
    rig,
    built,
    choose: (meant, doing) => change((one) => inHand(one, meant, doing)),
    leave: (meant) => change((one) => letGo(one, meant)),
    refuseNoMore: () => change(unrefused),
    edit: (how, focus) => change((one) => drew(one, how, edges.now(), focus)),
  };
  // A drawing is shown once it is on the disk, however long that takes.
  useLayoutEffect(() => {
    if (view?.focus !== undefined) focusOn(view.focus);
  }, [view]);
  const chosenBy = ({ target }: Event) => {
    const thing = target instanceof Element && target.closest<HTMLElement>("[data-thing]");
    const meant = thing ? meantBy(thing.dataset.thing ?? "") : undefined;
    if (meant !== undefined) at.choose(meant);
  };
  const grasp = (event: PointerEvent) => {
    if (!(event.target instanceof Element) || event.button !== 0 || root.current === null) return;
    const dragging = draggingOf(event.target, at, words);
    if (dragging !== undefined) follow(event, root.current, dragging);
  };
  const remove = ({ key, target }: KeyboardEvent) => {
    if (key !== "Delete" || !(target instanceof HTMLElement)) return;
    const meant = meantBy(target.dataset.thing ?? "");
    if (meant !== undefined) at.edit((one) => removal(one, meant));
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: one listener for all buttons of a large rig
    <div class="rig-screen" ref={root} onPointerDown={grasp} onKeyDown={remove}>
      <RigHead
        page={page}
        step={(way) => change((one) => steppedBack(one, way, edges.now()))}
        refused={view?.refused}
      />
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the same */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a button makes a click of a key by itself */}
      <div onClick={chosenBy}>
        {picture}
        <RigTray />
      </div>
      {view?.chosen && <RigActions at={at} chosen={view.chosen} doing={view.doing} />}
      <div class="foot">
        <button type="button" class="main" onClick={() => show({ screen: "board" })}>
          {words.rig.done}
        </button>
      </div>
    </div>
  );
}
