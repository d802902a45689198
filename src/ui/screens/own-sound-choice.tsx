import { useRef, useState } from "preact/hooks";
import type { FileTrouble } from "#audio/decode.ts";
import type { OwnNote } from "#core/hearing/own-sound.ts";
import type { Sound } from "#core/signals/sound.ts";
import { useWords } from "#ui/words/use-words.ts";
import type { Held } from "./use-page.ts";

/** A sound of the listener's own, ready to be heard. */
export interface Own {
  /** Which taking it was: two files may have one name. */
  readonly taken: number;
  readonly name: string;
  readonly sound: Sound;
  readonly notes: readonly OwnNote[];
}

interface Props {
  readonly held: Held;
  readonly own: Own | undefined;
  readonly onOwn: (own: Own | undefined) => void;
}

/** What becomes of a file that is taken. The last press counts, whatever is read first. */
function useTaking({ edges }: Held, onOwn: Props["onOwn"]) {
  const [trouble, setTrouble] = useState<FileTrouble>();
  const [busy, setBusy] = useState(false);
  const taken = useRef(0);
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    edges.player.silence();
    setBusy(true);
    taken.current += 1;
    const now = taken.current;
    const got = await edges
      .decode(file, edges.player.rate())
      .catch(() => ({ refused: "not loaded" as const }));
    if (now !== taken.current) return;
    setBusy(false);
    if ("refused" in got) return setTrouble(got.refused);
    setTrouble(undefined);
    onOwn({ taken: now, name: file.name, ...got });
  };
  const letGo = () => {
    taken.current += 1;
    setBusy(false);
    setTrouble(undefined);
    onOwn(undefined);
  };
  return { trouble, busy, take, letGo };
}

/** The test sounds, or a file pressed for or dropped here. */
export function OwnSoundChoice({ held, own, onOwn }: Props) {
  const { own: words } = useWords().sounds;
  const { trouble, busy, take, letGo } = useTaking(held, onOwn);
  const notes = own?.notes.map((note) => words.notes[note]) ?? [];
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a file may be dropped here, and chosen by the button inside
    <div
      class="programme"
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        void take(event.dataTransfer?.files[0]);
      }}
    >
      <button type="button" aria-pressed={own === undefined} onClick={letGo}>
        {words.knocks}
      </button>
      <label class={own ? "file chosen" : "file"}>
        <input
          type="file"
          accept="audio/*"
          onChange={({ currentTarget }) => {
            void take(currentTarget.files?.[0]);
            // Else the same file, chosen again after the knocks, is no change to the browser.
            currentTarget.value = "";
          }}
        />
        {own ? own.name : words.choose}
      </label>
      <p class="note">{[...(busy ? [words.reading] : notes), words.stays].join(" ")}</p>
      {trouble && (
        <p class="message" role="alert">
          {words.trouble[trouble]}
        </p>
      )}
    </div>
  );
}
