import type { PartKind } from "#core/parts/catalogue.ts";
import { type StandInFeed, standInFeeds } from "#core/rig/stand-ins.ts";
import { Point } from "#ui/parts/complaint-point.tsx";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import type { AtComplaint } from "./complaint-state.ts";

/** What each looks like, and what it is called here. */
const feeds: Readonly<
  Record<StandInFeed, { readonly kind?: PartKind; readonly name: string; readonly note: string }>
> = {
  laptop: { kind: "laptop", name: "a computer", note: "straight in its socket" },
  phone: { kind: "phone", name: "a phone", note: "straight in its socket" },
  "amplifier after a mixer": {
    kind: "headphone amplifier",
    name: "a headphone amplifier",
    note: "with a mixer before it",
  },
  "belt pack": { kind: "belt pack", name: "a belt pack", note: "by radio" },
  "personal mixer": { kind: "personal mixer", name: "a personal mixer", note: "one at each seat" },
  "don't know": { name: "don't know", note: "what is usual will do for now" },
};

/** What the headphones hang on, as far as somebody can see it. */
export const ComplaintFeed = ({ inHand, tell }: AtComplaint) => (
  <Roving label="What do their headphones hang on?" kind="points boxes">
    {inHand && (
      <Point onPress={() => tell({ feed: "rig in hand" })}>
        <KindPicture kind="mixer" />
        <span>
          {inHand.name}
          <small>the rig of your last session</small>
        </span>
      </Point>
    )}
    {standInFeeds.map((feed) => {
      const { kind, name, note } = feeds[feed];
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

const Unknown = () => (
  <svg class="kind-picture" viewBox="0 0 96 64" aria-hidden="true">
    <path class="glyph" d="M38 22c0 -18 24 -16 22 0c-1 9 -11 8 -11 18M49 52v.1" />
  </svg>
);

const worn = [
  ["headphones", "headphones"],
  ["in-ears", "in-ears"],
] as const;

/** What is worn: in-ears are never turned round or lent. */
export const ComplaintWorn = ({ tell }: AtComplaint) => (
  <Roving label="What do they wear?" kind="points boxes">
    {worn.map(([kind, name]) => (
      <Point key={kind} onPress={() => tell({ worn: kind })}>
        <KindPicture kind={kind} />
        <span>{name}</span>
      </Point>
    ))}
    <Point onPress={() => tell({ worn: "don't know" })}>
      <Unknown />
      <span>don't know</span>
    </Point>
  </Roving>
);

const counts = [1, 2, 3, 4, 5, 6, 8, 12, 16] as const;

/** How many hear the same feed. */
export const ComplaintListeners = ({ tell }: AtComplaint) => (
  <Roving label="How many hear this feed?" kind="points counts">
    {counts.map((count) => (
      <Point key={count} onPress={() => tell({ listeners: count })}>
        <span>{count === 1 ? "just one" : count}</span>
      </Point>
    ))}
    <Point onPress={() => tell({ listeners: 1 })}>
      <span>don't know</span>
    </Point>
  </Roving>
);
