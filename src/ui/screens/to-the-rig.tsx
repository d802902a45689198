import { useWords } from "#ui/words/use-words.ts";
import type { Session } from "./use-session.ts";

/** The way to the rig's picture, and what of the session its last changes have left out. A rig to try hides its fault: it stays as it is. */
export function ToTheRig({ held: { page, ready, show } }: { readonly held: Session }) {
  const { board } = useWords();
  const leftOut = ready?.derived.leftOut.length ?? 0;
  return (
    <>
      {leftOut > 0 && <p class="dim">{board.leftOut(leftOut)}</p>}
      {page.seed === undefined && (
        <button type="button" class="quiet" onClick={() => show({ screen: "rig" })}>
          {board.theRig}
        </button>
      )}
    </>
  );
}
