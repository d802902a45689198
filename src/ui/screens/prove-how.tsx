import { useMemo } from "preact/hooks";
import type { PartKind } from "#core/parts/catalogue.ts";
import type { Method } from "#core/proving/choice.ts";
import { isComparable } from "#core/proving/lead-matrix.ts";
import { leadPins } from "#ui/parts/lead-pins.ts";
import { MethodPicture } from "#ui/parts/method-picture.tsx";
import { Roving } from "#ui/parts/roving.tsx";
import { Tape } from "#ui/parts/tape.tsx";
import { useWords } from "#ui/words/use-words.ts";
import { Heading } from "./frame.tsx";
import { proving } from "./prove-begun.ts";
import type { LeadSaid } from "./prove-said.ts";
import { unseenNames } from "./prove-unseen.ts";
import type { Held } from "./use-page.ts";
import { useUnseen } from "./use-unseen.ts";

interface Props {
  readonly held: Held;
  readonly lead: LeadSaid;
  readonly kind: PartKind;
}

/** The ways of proving, and those of them that measure what comes back. */
const ways: readonly Method[] = ["meter", "return", "load box", "ear"];
const measuring: readonly Method[] = ["return", "load box"];

/** The ways on offer for a kind of lead. */
const offeredFor = (kind: PartKind): readonly Method[] =>
  ways.filter((by) => !measuring.includes(by) || isComparable(kind, by));

/** How a lead is to be proved: each way drawn, and what it cannot see. Choosing one begins a session of that lead alone. */
export function ProveHow({ held: { change, edges }, lead, kind }: Props) {
  const words = useWords();
  const { how, methods, you } = words.prove;
  const spelled = leadPins(kind);
  const offered = useMemo(() => offeredFor(kind), [kind]);
  const unseen = useUnseen(kind, offered);
  return (
    <section class="prove">
      <Tape>{words.language.patching.kinds[kind].name}</Tape>
      <Heading>{how.title}</Heading>
      <Roving label={how.label} kind="picks ways-to-prove">
        {offered.map((by) => (
          <button
            key={by}
            type="button"
            class="pick"
            onClick={() => change((page) => proving(page, { ...lead, kind, by }, you, edges.now()))}
          >
            <MethodPicture by={by} />
            <span class="tape">{methods[by].name}</span>
            <span class="note">{methods[by].note}</span>
            <CannotSee names={unseen[by] && unseenNames(words, spelled, unseen[by])} />
          </button>
        ))}
      </Roving>
    </section>
  );
}

/** Beneath a way of proving, what it does not see of this lead; nothing until that is worked out. */
function CannotSee({ names }: { readonly names: readonly string[] | undefined }) {
  const { cannotSee } = useWords().prove.how;
  return (
    <span class="cannot-see">
      {names === undefined
        ? "…"
        : cannotSee(names.slice(0, mostNamed), Math.max(0, names.length - mostNamed))}
    </span>
  );
}

/** So many things are named beneath a way; the result names all of them. */
const mostNamed = 4;
