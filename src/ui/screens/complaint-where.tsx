import type { PartKind } from "#core/parts/catalogue.ts";
import { type StandInFeed, standInFeeds } from "#core/rig/stand-ins.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useFirstWords, useWords } from "#ui/words/use-words.ts";
import type { AtComplaint } from "./complaint-state.ts";

/** What each looks like; nothing where that is not known. */
const kinds: Readonly<Record<StandInFeed, PartKind | undefined>> = {
  laptop: "laptop",
  phone: "phone",
  "amplifier after a mixer": "headphone amplifier",
  "belt pack": "belt pack",
  "personal mixer": "personal mixer",
  "don't know": undefined,
};

/** What the headphones hang on, as far as somebody can see it. */
export function ComplaintFeed({ inHand, tell }: AtComplaint) {
  const { complaint } = useWords();
  const { rigName } = useFirstWords().start;
  return (
    <Roving label={complaint.questions.feed} kind="points boxes">
      {inHand && (
        <Point onPress={() => tell({ feed: "rig in hand" })}>
          <KindPicture kind="mixer" />
          <span>
            {rigName(inHand.name)}
            <small>{complaint.lastRig}</small>
          </span>
        </Point>
      )}
      {standInFeeds.map((feed) => {
        const kind = kinds[feed];
        const { name, note } = complaint.feeds[feed];
        return (
          <Point key={feed} onPress={() => tell({ feed })}>
            {kind ? <KindPicture kind={kind} /> : <Unknown />}
            <span>
              {name}
              <small>{note}</small>
            </span>
          </Point>
        );
      })}
    </Roving>
  );
}

const Unknown = () => (
  <svg class="kind-picture" viewBox="0 0 96 64" aria-hidden="true">
    <path class="glyph" d="M38 22c0 -18 24 -16 22 0c-1 9 -11 8 -11 18M49 52v.1" />
  </svg>
);

const worn = ["headphones", "in-ears"] as const;

/** What is worn: in-ears are never turned round or lent. */
export function ComplaintWorn({ tell }: AtComplaint) {
  const { complaint } = useWords();
  return (
    <Roving label={complaint.questions.worn} kind="points boxes">
      {worn.map((kind) => (
        <Point key={kind} onPress={() => tell({ worn: kind })}>
          <KindPicture kind={kind} />
          <span>{complaint.worn[kind]}</span>
        </Point>
      ))}
      <Point onPress={() => tell({ worn: "don't know" })}>
        <Unknown />
        <span>{complaint.notKnown}</span>
      </Point>
    </Roving>
  );
}

const counts = [1, 2, 3, 4, 5, 6, 8, 12, 16] as const;

/** How many hear the same feed. */
export function ComplaintListeners({ tell }: AtComplaint) {
  const { complaint } = useWords();
  return (
    <Roving label={complaint.questions.listeners} kind="points counts">
      {counts.map((count) => (
        <Point key={count} onPress={() => tell({ listeners: count })}>
          <span>{count === 1 ? complaint.justOne : count}</span>
        </Point>
      ))}
      <Point onPress={() => tell({ listeners: 1 })}>
        <span>{complaint.notKnown}</span>
      </Point>
    </Roving>
  );
}
