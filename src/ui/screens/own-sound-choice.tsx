import { useRef, useState } from "preact/hooks";
import type { FileTrouble } from "#audio/decode.ts";
import type { OwnNote } from "#core/hearing/own-sound.ts";
import type { Sound } from "#core/signals/sound.ts";
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
  const { trouble, busy, take, letGo } = useTaking(held, onOwn);
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
        knocks and bursts
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
        {own ? own.name : "a sound of your own"}
      </label>
      <p class="note">
        {busy ? "Reading it." : (own?.notes.map((note) => noteWords[note]).join(" ") ?? "")} A file
        stays on this device.
      </p>
      {trouble && (
        <p class="message" role="alert">
          {fileWords[trouble]}
        </p>
      )}
    </div>
  );
}

const noteWords: Readonly<Record<OwnNote, string>> = {
  "first minute only": "Only its first minute is played.",
  "first two channels only": "Only its first two channels are played.",
};

const fileWords: Readonly<Record<FileTrouble, string>> = {
  "too big": "That file is over 200 MB. Take a shorter one; a minute is enough.",
  unreadable: "That file cannot be read. It may have been moved; choose it again.",
  "not a sound": "The browser finds no sound in that file. Take a WAV, MP3 or other sound file.",
  "not loaded": "What reads sound files did not load. Look at the connection and choose it again.",
  "not finite": "That file has broken samples in it. Take another one.",
  "too short": "That sound is shorter than half a second. Take a longer one.",
  silent: "There is nothing to hear in that file. Take another one.",
  "only clicks": "There is nothing but clicks in that file. Take another one.",
};
