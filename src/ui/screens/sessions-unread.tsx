import { useLayoutEffect, useRef } from "preact/hooks";
import type { Unread } from "#storage/store.ts";
import { useFirstWords, useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { saveUnread } from "./save-session.ts";
import type { Sessions } from "./use-sessions.ts";

/** Why there is no list, where it could not be read: nothing is told of what may be there. */
export function NotRead({ sessions: { amiss, readAgain } }: { readonly sessions: Sessions }) {
  const words = useWords().sessions;
  const { notice } = useFirstWords();
  // What is said of a disk that is full, or fails, is said of writing.
  const why = amiss === undefined || amiss === "full" || amiss === "failed" ? "" : notice[amiss];
  return (
    <div class="sessions">
      <Heading>{words.notRead}</Heading>
      <p class="sub">
        {why} {words.notReadHint}
      </p>
      <button type="button" class="say" onClick={readAgain}>
        {words.readAgain}
      </button>
    </div>
  );
}

interface RemovedProps {
  readonly name: string;
  /** It was removed just now, so that the focus goes on from here. */
  readonly focused?: boolean;
  readonly onRestore: () => void;
}

/** One that was deleted, as long as it can be brought back. */
export function Removed({ name, focused = false, onRestore }: RemovedProps) {
  const words = useWords().sessions;
  const button = useRef<HTMLButtonElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, as it comes
  useLayoutEffect(() => {
    if (focused) button.current?.focus();
  }, []);
  return (
    <li class="session removed">
      <p>
        {words.removed(name)}{" "}
        <button type="button" class="quiet" ref={button} onClick={onRestore}>
          {words.restore}
        </button>
      </p>
    </li>
  );
}

interface UnreadProps {
  readonly one: Unread;
  readonly sessions: Sessions;
  readonly now: () => number;
}

/** One in which no rig can be understood: nothing to go on with, and nothing to lose. */
export function UnreadRow({ one, sessions, now }: UnreadProps) {
  const words = useWords().sessions;
  if (one.deleted !== undefined)
    return <Removed name={words.unread} onRestore={() => sessions.restore(one)} />;
  return (
    <li class="session">
      <div>
        <p>{words.unread}</p>
        <p class="noted">{words.unreadHint(one.entries.length)}</p>
        <button type="button" class="say" onClick={() => saveUnread(one, words.unread, now())}>
          {words.save}
        </button>{" "}
        <button type="button" class="say" onClick={() => sessions.remove(one)}>
          {words.remove}
        </button>
      </div>
    </li>
  );
}
