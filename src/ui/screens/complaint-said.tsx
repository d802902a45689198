import { type Complaint, complaints } from "#core/checks/complaints.ts";
import { capital } from "#core/report/phrases.ts";
import type { ComplaintWords } from "#core/words/language.ts";
import { ComplaintPicture } from "#ui/parts/complaint-picture.tsx";
import { Point } from "#ui/parts/complaint-point.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";
import type { AtComplaint } from "./complaint-state.ts";

interface Choice {
  readonly words: string;
  readonly picture: Complaint;
  readonly means: readonly Complaint[];
}

/** What to point at, in the order of the list; after the two ears, that it was not said which. */
const choicesIn = ({ said, means, eitherEar }: ComplaintWords): readonly Choice[] =>
  complaints.flatMap((one): Choice[] => {
    if (one === "no complaint") return [];
    const own = { words: said[one], picture: one, means: [one] };
    if (one !== "only the right ear works") return [own];
    return [own, { words: eitherEar, picture: "something else", means: means[eitherEar] ?? [] }];
  });

/** What people say, drawn; and their own words, each of which may be several of these. */
export function ComplaintSaid({ tell }: Pick<AtComplaint, "tell">) {
  const { language, complaint } = useWords();
  const { means, eitherEar } = language.complaints;
  return (
    <>
      <p class="hint">{complaint.nearest}</p>
      <Roving label={complaint.questions.said} kind="points">
        {choicesIn(language.complaints).map(({ words, picture, means: some }) => (
          <Point key={words} onPress={() => tell({ said: some })}>
            <ComplaintPicture complaint={picture} />
            <span>{capital(words)}</span>
          </Point>
        ))}
      </Roving>
      <details>
        <summary>{complaint.ownWords}</summary>
        <Roving label={complaint.ownWords} kind="own-words">
          {Object.entries(means)
            .filter(([word, some]) => word !== eitherEar && !some.includes("no complaint"))
            .map(([word, some]) => (
              <OwnWord key={word} word={word} onPress={() => tell({ said: some })} />
            ))}
        </Roving>
      </details>
    </>
  );
}

interface WordProps {
  readonly word: string;
  readonly onPress: () => void;
}

const OwnWord = ({ word, onPress }: WordProps) => (
  <button type="button" class="tape" onClick={onPress}>
    {word}
  </button>
);
