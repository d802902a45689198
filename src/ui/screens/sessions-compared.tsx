import { useEffect, useState } from "preact/hooks";
import { capital } from "#core/report/phrases.ts";
import { build, type Rig } from "#core/rig/rig.ts";
import {
  type Change,
  type Compared,
  compared,
  hasChanged,
  isWantedOtherwise,
  type Stood,
  wasCompared,
} from "#core/session/compared.ts";
import { rigIn } from "#core/session/log.ts";
import { faultText } from "#core/words/fault-text.ts";
import type { Listed } from "#storage/store.ts";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { begunAt } from "./use-sessions.ts";

interface Props {
  readonly now: Listed;
  readonly then: Listed;
  readonly nameOf: (one: Listed) => string;
  readonly dateOf: (one: Listed) => string;
}

/** What changed from the earlier of two sessions to the later, position by position. */
export function SessionsCompared({ now, then, nameOf, dateOf }: Props) {
  const [earlier, later] = begunAt(then.log) <= begunAt(now.log) ? [then, now] : [now, then];
  const both = useCompared(earlier, later);
  const { sessions: words, language } = useWords();
  const shown = (parts: readonly string[]) => parts.map(language.names.alone).join(", ");
  const changed = both?.positions.filter(hasChanged) ?? [];
  const others = both?.positions.filter((one) => !hasChanged(one)) ?? [];
  return (
    <div class="sessions compared">
      <Heading>{both ? headline(words, both) : words.loading}</Heading>
      <p class="sub">{words.since(nameOf(earlier), dateOf(earlier))}</p>
      {both?.another && <p>{words.anotherMore}</p>}
      <ul>
        {[...changed, ...others].map((one) => (
          <li key={one.is ? one.position : `then ${one.position}`}>
            <Tape yellow={hasChanged(one)}>{one.name}</Tape>
            <Sentences change={one} was={rigIn(earlier.log)} is={rigIn(later.log)} />
          </li>
        ))}
      </ul>
      {both && both.gone.length > 0 && <p class="dim">{words.gone(shown(both.gone))}</p>}
      {both && both.come.length > 0 && <p class="dim">{words.come(shown(both.come))}</p>}
    </div>
  );
}

/** Two rigs take a moment to be worked out: the screen stands before. */
function useCompared({ log: then }: Listed, { log: now }: Listed): Compared | undefined {
  const [both, setBoth] = useState<Compared>();
  useEffect(() => {
    const soon = setTimeout(() => setBoth(compared(then, now)));
    return () => clearTimeout(soon);
  }, [then, now]);
  return both;
}

function headline(words: Words["sessions"], { another, positions }: Compared): string {
  if (another) return words.another;
  const all = positions.filter(wasCompared);
  if (all.length > 0)
    return words.changed(all.filter(hasChanged).length, all.length, positions.length);
  return positions.every(({ gaps }) => gaps.includes("not heard now"))
    ? capital(words.notHeard)
    : words.noneCompared;
}

interface SentencesProps {
  readonly change: Change;
  readonly was: Rig | undefined;
  readonly is: Rig | undefined;
}

function Sentences({ change, was, is }: SentencesProps) {
  const { language, round, sessions: words } = useWords();
  const stood = (rig: Rig | undefined, one: Stood) => stoodText({ language, words }, rig, one);
  const lines = [
    ...change.levels.map(words.change),
    ...(change.otherwise && change.was && change.is
      ? [words.was(stood(was, change.was), stood(is, change.is))]
      : []),
    ...(isWantedOtherwise(change)
      ? [words.wanted(feedText(round, change.was), feedText(round, change.is))]
      : []),
    ...(hasChanged(change) || change.gaps.some((gap) => gap !== "no levels in both")
      ? []
      : [words.asBefore]),
  ];
  return (
    <>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {change.gaps.length > 0 && (
        <p class="dim">{change.gaps.map((gap) => words.gaps[gap]).join("; ")}</p>
      )}
    </>
  );
}

function stoodText(
  { language, words }: { readonly language: Words["language"]; readonly words: Words["sessions"] },
  rig: Rig | undefined,
  { state, fault }: Stood,
): string {
  if (fault === undefined || rig === undefined) return words.stood[state];
  return faultText(language, build(rig), fault);
}

const feedText = ({ feeds, stereo }: Words["round"], stood: Stood | undefined): string =>
  stood?.wants === undefined ? stereo : feeds[stood.wants];
