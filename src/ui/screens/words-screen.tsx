import { useEffect, useState } from "preact/hooks";
import { type TermName, termNames, termSources } from "#ui/words/term-names.ts";
import { useWords, type Words } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import type { Held } from "./use-page.ts";
import { WordDrawing } from "./word-drawing.tsx";

type Trade = Words["trade"];

interface Props {
  readonly held: Held;
  /** The word to stand at. */
  readonly word: string | undefined;
}

/** The words of the trade in order of the alphabet, to be found as one types, or by their first letter. */
export function WordsScreen({ held: { page }, word }: Props) {
  const { trade } = useWords();
  const [sought, setSought] = useState("");
  const { tongue } = page.settings;
  const found = foundIn(trade, ordered(trade, tongue), sought.trim().toLocaleLowerCase(tongue));
  return (
    <div class="words-screen">
      <Heading>{trade.title}</Heading>
      <label class="find">
        {trade.find}
        <input
          type="search"
          autoComplete="off"
          value={sought}
          onInput={({ currentTarget }) => setSought(currentTarget.value)}
        />
      </label>
      {sought === "" && <Letters trade={trade} names={found} />}
      <p role="status">{found.length === 0 ? trade.none : ""}</p>
      <dl>
        {found.map((name) => (
          <Word key={name} trade={trade} name={name} here={name === word} />
        ))}
      </dl>
      <p class="dim">{trade.practice}</p>
    </div>
  );
}

function ordered({ terms }: Trade, tongue: string): readonly TermName[] {
  const { compare } = new Intl.Collator(tongue);
  return termNames.toSorted((a, b) => compare(terms[a].term, terms[b].term));
}

/** What is typed may be a part of the word, here or in English, which comes first, or of what is said of it. */
function foundIn({ terms }: Trade, names: readonly TermName[], sought: string) {
  const within = (text: string) => text.toLocaleLowerCase().includes(sought);
  const called = names.filter((name) => within(terms[name].term) || within(name));
  return [...called, ...names.filter((name) => !called.includes(name) && within(terms[name].text))];
}

const letterOf = ({ terms }: Trade, name: TermName): string =>
  terms[name].term.charAt(0).normalize("NFD").charAt(0).toLocaleUpperCase();

interface LettersProps {
  readonly trade: Trade;
  readonly names: readonly TermName[];
}

/** A jump to the first word of each letter. */
const Letters = ({ trade, names }: LettersProps) => (
  <nav class="letters" aria-label={trade.letters}>
    {[...new Set(names.map((name) => letterOf(trade, name)))].map((letter) => (
      <button
        key={letter}
        type="button"
        class="step"
        onClick={() => goTo(names.find((name) => letterOf(trade, name) === letter))}
      >
        {letter}
      </button>
    ))}
  </nav>
);

const idOf = (name: TermName): string => `word-${name.replaceAll(" ", "-")}`;

function goTo(name: TermName | undefined): void {
  const place = name && document.getElementById(idOf(name));
  if (!place) return;
  place.scrollIntoView();
  place.focus({ preventScroll: true });
}

interface WordProps {
  readonly trade: Trade;
  readonly name: TermName;
  /** It was come for. */
  readonly here: boolean;
}

function Word({ trade, name, here }: WordProps) {
  useEffect(() => {
    if (here) goTo(name);
  }, [here, name]);
  const { term, text } = trade.terms[name];
  const source = termSources[name];
  return (
    <div class="trade-word">
      <dt id={idOf(name)} tabIndex={-1}>
        {term}
      </dt>
      <dd>
        <WordDrawing name={name} />
        <span>
          {text} {source && <small>{`(${trade.source(source)})`}</small>}
        </span>
      </dd>
    </div>
  );
}
