import { useLayoutEffect, useRef, useState } from "preact/hooks";
import type { State } from "#core/session/derive.ts";
import { titleOf } from "#core/session/log.ts";
import type { Listed } from "#storage/store.ts";
import { SessionPicture } from "#ui/parts/session-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { longestName } from "./longest-name.ts";
import { saveSession } from "./save-session.ts";

interface Props {
  readonly one: Listed;
  readonly name: string;
  readonly date: string;
  readonly states: readonly State[];
  /** It is the one in hand. */
  readonly here: boolean;
  /** There is another to compare it with. */
  readonly comparable: boolean;
  readonly now: () => number;
  readonly onOpen: () => void;
  readonly onRename: (name: string) => void;
  readonly onTomorrow: () => void;
  readonly onCompare: () => void;
  readonly onRemove: () => void;
  /** Its tape takes the focus as it comes. */
  readonly focused: boolean;
}

/** One session: its rig as a stamp, its tape, and what else can be done with it. */
export function SessionRow(props: Props) {
  const [naming, setNaming] = useState(false);
  const { name, states, onOpen, onRename } = props;
  const tape = useRef<HTMLButtonElement>(null);
  const back = useRef(props.focused);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the tape comes back with it
  useLayoutEffect(() => {
    if (back.current) tape.current?.focus();
    back.current = false;
  }, [naming]);
  const done = (byKey: boolean) => {
    back.current = byKey;
    setNaming(false);
  };
  const rename = (text: string, byKey: boolean) => {
    done(byKey);
    if (text.trim() !== "" && text.trim() !== name) onRename(text.trim());
  };
  return (
    <li class="session">
      <SessionPicture states={states} />
      <div>
        {naming ? (
          <Naming name={name} onName={rename} onLeave={() => done(true)} />
        ) : (
          <button type="button" class="tape" ref={tape} onClick={onOpen}>
            {name}
          </button>
        )}
        <Noted {...props} />
        <More {...props} onName={() => setNaming(true)} />
      </div>
    </li>
  );
}

/** When it was, by whom, and how it stands. */
function Noted({ one, date, states, here }: Props) {
  const words = useWords().sessions;
  const count = (state: State) => states.filter((one) => one === state).length;
  const there = states.filter((state) => state !== "absent");
  const heard = there.some((state) => state !== "not heard");
  const { who } = titleOf(one.log);
  return (
    <p class="noted">
      {date}
      {who !== undefined && `, ${words.by(who)}`}
      {" · "}
      {heard
        ? words.noted(count("healthy"), count("wrong"), count("unsure"), there.length)
        : words.notHeard}
      {here && <strong>{` · ${words.here}`}</strong>}
    </p>
  );
}

type MoreProps = Props & { readonly onName: () => void };

function More({ one, name, comparable, now, onName, ...on }: MoreProps) {
  const words = useWords().sessions;
  const save = (bench: boolean) => saveSession(one, name, now(), bench);
  return (
    <details>
      <summary aria-label={words.more(name)}>{words.moreShort}</summary>
      <div class="much">
        <button type="button" class="say" onClick={onName}>
          {words.rename}
        </button>
        {one.seed === undefined && (
          <button type="button" class="say" onClick={on.onTomorrow}>
            {words.tomorrow}
          </button>
        )}
        {comparable && (
          <button type="button" class="say" onClick={on.onCompare}>
            {words.compare}
          </button>
        )}
        <button type="button" class="say" onClick={() => save(false)}>
          {words.save}
        </button>
        {one.seed !== undefined && (
          <button type="button" class="say" onClick={() => save(true)}>
            {words.saveBench}
          </button>
        )}
        <button type="button" class="say" onClick={on.onRemove}>
          {words.remove}
        </button>
      </div>
    </details>
  );
}

interface NamingProps {
  readonly name: string;
  readonly onName: (name: string, byKey: boolean) => void;
  readonly onLeave: () => void;
}

/** The tape, written on: Enter or leaving it names, Escape leaves it as it was. */
function Naming({ name, onName, onLeave }: NamingProps) {
  const left = useRef(false);
  return (
    <input
      class="tape naming"
      aria-label={useWords().sessions.name}
      maxLength={longestName}
      value={name}
      ref={(input) => {
        if (input && document.activeElement !== input && !left.current) input.select();
      }}
      onKeyDown={(event) => {
        const { key, currentTarget } = event;
        if (key !== "Enter" && key !== "Escape") return;
        // The focus goes to the tape, which the rest of this press would open.
        event.preventDefault();
        left.current = true;
        if (key === "Enter") onName(currentTarget.value, true);
        else onLeave();
      }}
      onBlur={({ currentTarget }) => {
        if (!left.current) onName(currentTarget.value, false);
      }}
    />
  );
}
