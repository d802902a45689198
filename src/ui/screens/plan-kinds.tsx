import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import type { Family } from "#core/parts/kind.ts";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords, type Words } from "#ui/words/use-words.ts";

/** Kinds under what they have in common. */
export interface Group {
  readonly title: keyof Words["plan"]["groups"];
  readonly kinds: readonly PartKind[];
}

const everyKind = Object.keys(catalogue) as readonly PartKind[];

/** Kinds of a family whose parts have a way out, or a way in. */
const kinds = (family: Family, has: (kind: PartKind) => boolean): readonly PartKind[] =>
  everyKind.filter((kind) => catalogue[kind].family === family && has(kind));

const sends = (kind: PartKind): boolean =>
  catalogue[kind].make().sockets.some(({ side }) => side === "out");
const takes = (kind: PartKind): boolean => catalogue[kind].make().takes.length > 0;

const isWireless = (kind: PartKind): boolean =>
  catalogue[kind].make().plugs.every((plug) => plug.kind === "link");

/** What a feed may come from. */
export const sendingKinds: readonly Group[] = [
  { title: "source", kinds: kinds("source", sends) },
  { title: "box", kinds: kinds("amplifier", sends) },
];

/** What a feed may go into. */
export const intoKinds: readonly Group[] = [
  { title: "box", kinds: kinds("amplifier", takes) },
  { title: "straight", kinds: kinds("headphones", takes) },
];

/** What is worn at a box. */
export const heardKinds: readonly Group[] = [
  { title: "worn", kinds: kinds("headphones", (kind) => !isWireless(kind)) },
];

interface Props {
  readonly groups: readonly Group[];
  readonly now: PartKind;
  readonly onChoose: (kind: PartKind) => void;
}

/** Drawn kinds with their names on tape. */
export function KindTray({ groups, now, onChoose }: Props) {
  const { language, plan } = useWords();
  const { kinds: named } = language.patching;
  return (
    <>
      {groups.map(({ title, kinds: shown }) => (
        <div key={title}>
          <h2>{plan.groups[title]}</h2>
          <Roving label={plan.groups[title]} kind="picks">
            {shown.map((kind) => (
              <button
                key={kind}
                type="button"
                class="pick"
                aria-pressed={kind === now}
                onClick={() => onChoose(kind)}
              >
                <KindPicture kind={kind} />
                <span class="tape">{named[kind].name}</span>
                <span class="note">{named[kind].note}</span>
              </button>
            ))}
          </Roving>
        </div>
      ))}
    </>
  );
}
