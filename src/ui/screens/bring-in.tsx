import { useEffect, useRef, useState } from "preact/hooks";
import type { Log } from "#core/session/log.ts";
import { type ReadFile, readFile } from "#core/session/read-case.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import type { Sessions } from "./use-sessions.ts";

/** A log of a day stays well under it. */
const mostBytes = 20 * 1024 * 1024;

type Refused = keyof Words["sessions"]["refused"];
/** What became of a file. */
type Came =
  | { readonly came: "in" | "before"; readonly file: Extract<ReadFile, { read: true }> }
  | { readonly came: "not"; readonly why: Refused };

interface Props {
  readonly sessions: Sessions;
  readonly nameOf: (of: { readonly log: Log; readonly seed?: number }) => string;
}

/** A session out of a file: chosen, or dropped. What was wrong with it is said by name. */
export function BringIn({ sessions, nameOf }: Props) {
  const [came, setCame] = useState<Came>();
  const input = useRef<HTMLInputElement>(null);
  const words = useWords().sessions;
  const take = async (file: File | undefined) => {
    if (file !== undefined) setCame(await broughtIn(file, sessions));
  };
  useDrop((file) => void take(file));
  return (
    <section class="bring-in">
      <button type="button" class="say" onClick={() => input.current?.click()}>
        {words.bringIn}
      </button>{" "}
      <span class="dim">{words.dropHere}</span>
      <input
        ref={input}
        class="hidden"
        type="file"
        accept=".json,application/json"
        aria-label={words.bringIn}
        tabIndex={-1}
        onChange={({ currentTarget }) => {
          void take(currentTarget.files?.[0]);
          currentTarget.value = "";
        }}
      />
      <div role="status">{came && <Said came={came} nameOf={nameOf} />}</div>
    </section>
  );
}

/** A file dropped anywhere on the page. */
function useDrop(take: (file: File | undefined) => void): void {
  useEffect(() => {
    const over = (event: DragEvent) => event.preventDefault();
    const drop = (event: DragEvent) => {
      event.preventDefault();
      take(event.dataTransfer?.files[0]);
    };
    document.addEventListener("dragover", over);
    document.addEventListener("drop", drop);
    return () => {
      document.removeEventListener("dragover", over);
      document.removeEventListener("drop", drop);
    };
  }, [take]);
}

async function broughtIn(file: File, { all = [], lay, layAgain }: Sessions): Promise<Came> {
  if (file.size > mostBytes) return { came: "not", why: "too large" };
  const text = await file.text().catch(() => undefined);
  if (text === undefined) return { came: "not", why: "unreadable" };
  const read = readFile(text);
  if (!read.read) return { came: "not", why: read.why };
  const same = JSON.stringify(read.log);
  const alike = all.filter(({ log }) => JSON.stringify(log) === same);
  if (alike.some(({ deleted }) => deleted === undefined)) return { came: "before", file: read };
  const [deleted] = alike;
  const lies = await (deleted ? layAgain(deleted) : lay(read.log, read.about?.bench));
  return lies ? { came: "in", file: read } : { came: "not", why: "not kept" };
}

function Said({ came, nameOf }: { readonly came: Came } & Pick<Props, "nameOf">) {
  const words = useWords().sessions;
  if (came.came === "not") return <p class="refused">{words.refused[came.why]}</p>;
  const { log, lost, cutOff, about } = came.file;
  const bench = about?.bench;
  const name = nameOf({ log, ...(bench === undefined ? {} : { seed: bench }) });
  return (
    <>
      <p>{came.came === "in" ? words.broughtIn(name) : words.hereAlready(name)}</p>
      {cutOff && <p>{words.cutOff}</p>}
      {lost.length > 0 && (
        <>
          <p>{words.leftOut(lost.length)}</p>
          <ul class="lost">
            {lost.map((one) => (
              <li key={one.place}>{words.lost(one)}</li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
