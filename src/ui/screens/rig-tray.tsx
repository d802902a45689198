import { catalogue, type PartKind } from "#core/parts/catalogue.ts";
import { KindButton } from "#ui/parts/kind-button.tsx";
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

/** Every kind that a rig is made of: people come with its positions, what measures with what is measured. */
export const everyKind = (Object.keys(catalogue) as PartKind[]).filter(
  (kind) => !["person", "measuring"].includes(catalogue[kind].family),
);

const rest = everyKind.filter((kind) => !usual.includes(kind));

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
  return (
    <Roving label={label} kind="rig-kinds">
      {kinds.map((kind) => (
        <KindButton key={kind} kind={kind} />
      ))}
    </Roving>
  );
}
