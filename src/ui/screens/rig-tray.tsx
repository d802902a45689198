import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { KindPicture } from "#ui/parts/kind-picture.tsx";
import { keyOf } from "#ui/parts/rig-keys.ts";
import { Roving } from "#ui/parts/roving.tsx";
import { useWords } from "#ui/words/use-words.ts";

/** What is added most; everything else lies in a fold. Common practice, no source. */
const usual: readonly PartKind[] = [
  "headphones",
  "in-ears",
  "headphone amplifier",
  "splitter",
  "size adapter",
  "TRS extension lead",
  "mixer",
  "laptop",
];

const rest = (Object.keys(catalogue) as PartKind[]).filter(
  (kind) => !usual.includes(kind) && !["person", "measuring"].includes(catalogue[kind].family),
);

/** Things that are not in the picture yet: to be dragged to where they go, or pressed to be asked where. */
export function RigTray() {
  const { rig: words } = useWords();
  return (
    <section class="rig-tray" aria-label={words.things}>
      <h2>{words.things}</h2>
      <Kinds label={words.things} kinds={usual} />
      <details>
        <summary>{words.moreThings}</summary>
        <Kinds label={words.moreThings} kinds={rest} />
      </details>
    </section>
  );
}

function Kinds({ label, kinds }: { readonly label: string; readonly kinds: readonly PartKind[] }) {
  const { language } = useWords();
  return (
    <Roving label={label} kind="kinds">
      {kinds.map((kind) => (
        <button
          key={kind}
          type="button"
          class="kind"
          data-thing={keyOf({ kind })}
          title={language.patching.kinds[kind].note}
        >
          <KindPicture kind={kind} />
          <span>{language.patching.kinds[kind].name}</span>
        </button>
      ))}
    </Roving>
  );
}
