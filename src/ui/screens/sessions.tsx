import { useRef } from "preact/hooks";
import { tomorrowOf } from "#core/session/tomorrow.ts";
import type { Listed } from "#storage/store.ts";
import { SessionPicture } from "#ui/parts/session-picture.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { BringIn } from "./bring-in.tsx";
import { Heading } from "./frame.tsx";
import { begunWith, goneOnWith, opened, type View } from "./page.ts";
import { useNames } from "./session-names.ts";
import { SessionRow } from "./session-row.tsx";
import { SessionsCompared } from "./sessions-compared.tsx";
import { NotRead, Removed, UnreadRow } from "./sessions-unread.tsx";
import type { Held } from "./use-page.ts";
import { type Sessions, useSessions } from "./use-sessions.ts";
import { useStates } from "./use-states.ts";

type SessionsView = Extract<View, { screen: "sessions" }>;
type Names = ReturnType<typeof useNames>;

interface Props {
  readonly held: Held;
  readonly view: SessionsView;
}

/** Every session that is kept: one to go on with, or two beside each other. */
export function SessionsScreen({ held, view }: Props) {
  const sessions = useSessions(held);
  const names = useNames();
  const states = useStates(sessions.all);
  const [now, then] = (view.compare ?? []).map((name) =>
    sessions.all?.find(({ session }) => session === name),
  );
  if (now && then) return <SessionsCompared now={now} then={then} {...names} />;
  if (now) return <Choosing {...{ held, now, sessions, names, states }} />;
  return <All {...{ held, sessions, names, states }} />;
}

interface AllProps {
  readonly held: Held;
  readonly sessions: Sessions;
  readonly names: Names;
  readonly states: ReturnType<typeof useStates>;
}

function All({ held, sessions, names, states }: AllProps) {
  const words = useWords().sessions;
  const { all, unread, amiss } = sessions;
  const moved = useRef<string>(undefined);
  const move = (one: Listed, how: (one: Listed) => void) => () => {
    moved.current = one.session;
    how(one);
  };
  if (amiss !== undefined) return <NotRead sessions={sessions} />;
  const count = [...(all ?? []), ...unread].filter(({ deleted }) => deleted === undefined).length;
  return (
    <div class="sessions">
      <Heading>{all ? words.kept(count) : words.loading}</Heading>
      {all && <p class="sub">{count === 0 ? words.none : words.hint}</p>}
      <ul>
        {all?.map((one) =>
          one.deleted === undefined ? (
            <Row
              key={one.session}
              {...{ held, sessions, names, one }}
              states={states(one.log)}
              focused={moved.current === one.session}
              onRemove={move(one, sessions.remove)}
            />
          ) : (
            <Removed
              key={one.session}
              name={names.nameOf(one)}
              focused={moved.current === one.session}
              onRestore={move(one, sessions.restore)}
            />
          ),
        )}
        {unread.map((one) => (
          <UnreadRow key={one.session} one={one} sessions={sessions} now={held.edges.now} />
        ))}
      </ul>
      <BringIn sessions={sessions} nameOf={names.nameOf} />
    </div>
  );
}

type RowProps = Omit<AllProps, "states"> & {
  readonly one: Listed;
  readonly focused: boolean;
  readonly onRemove: () => void;
  readonly states: ReturnType<AllProps["states"]>;
};

function Row({ held, sessions, names: { nameOf, dateOf }, one, states, ...row }: RowProps) {
  const { change, edges, keeping, open, show } = held;
  const others = sessions.all?.filter(({ deleted }) => deleted === undefined) ?? [];
  return (
    <SessionRow
      one={one}
      name={nameOf(one)}
      date={dateOf(one)}
      states={states}
      here={one.session === keeping.session}
      comparable={others.length > 1}
      now={edges.now}
      onOpen={() =>
        one.session === keeping.session ? show(viewOf(one)) : open(one, opened(viewOf(one)))
      }
      onRename={(name) => sessions.rename(one, name)}
      onTomorrow={() => change((page) => begunWith(page, tomorrowOf(one.log), edges.now()))}
      onCompare={() => show({ screen: "sessions", compare: [one.session] })}
      {...row}
    />
  );
}

const viewOf = ({ log, position }: Listed): View => goneOnWith(log, position);

/** Which one to put beside it. */
function Choosing({ held, now, sessions, names, states }: AllProps & { readonly now: Listed }) {
  const words = useWords().sessions;
  const others = (sessions.all ?? []).filter(
    ({ session, deleted }) => session !== now.session && deleted === undefined,
  );
  return (
    <div class="sessions">
      <Heading>{words.withWhich(names.nameOf(now))}</Heading>
      <p class="sub">{names.dateOf(now)}</p>
      <ul>
        {others.map((one) => (
          <li key={one.session} class="session">
            <SessionPicture states={states(one.log)} />
            <div>
              <button
                type="button"
                class="tape"
                onClick={() =>
                  held.show({ screen: "sessions", compare: [now.session, one.session] })
                }
              >
                {names.nameOf(one)}
              </button>
              <p class="noted">{names.dateOf(one)}</p>
            </div>
          </li>
        ))}
      </ul>
    </div>
  );
}
